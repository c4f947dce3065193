/**
 * Places to look from, by name.
 */
import { numberFrom, type OptionRules, requireArgument, requireFields, wholeFrom } from "../../base/options.js";
import type { View } from "./camera.js";

/**
 * Where a picture can be taken from, by name; angles in degrees. Standing rings have their top (θ = 90°) up.
 *
 * @example
 * const lower = { ...views.lying, elevation: 20 }; // degrees
 */
export const views = {
  /** Standing, turned, from a little above: bore and pattern. */
  "three-quarter": { stance: "standing", azimuth: 38, elevation: 16 },
  /** Along the finger's axis. */
  front: { stance: "standing", azimuth: 0, elevation: 0 },
  /** Across the band. */
  side: { stance: "standing", azimuth: 90, elevation: 0 },
  /** Down on the top of the ring. */
  top: { stance: "standing", azimuth: 90, elevation: 90 },
  /** Lying flat, its top towards the camera. */
  lying: { stance: "lying", azimuth: 90, elevation: 28 },
} as const satisfies Readonly<Record<string, View>>;

/** Name of a built-in view. */
export type ViewName = keyof typeof views;

const ANGLE = { ...numberFrom(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY), allowed: "degrees", needed: true };

const VIEW: OptionRules<View> = {
  stance: { holds: (value) => value === "standing" || value === "lying", allowed: "standing, lying", needed: true },
  azimuth: ANGLE,
  elevation: ANGLE,
};

/** Ten for each degree: finer than any film. Chosen. */
const MOST_FRAMES = 3600;

/**
 * The views of one turn of the table, evenly spaced, beginning with the view itself; the table turns counter-clockwise seen
 * from above.
 *
 * @param frames how many, 0 to 3600
 * @throws AnnuletError `option-invalid`, `option-missing`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const take = openStudio(mesh);
 * const frames = turntable(views.lying, 4).map((view) => take({ view, width: 200, height: 150 }));
 */
export function turntable(view: View, frames: number): readonly View[] {
  requireFields("view", view, VIEW);
  requireArgument("frames", frames, wholeFrom(0, MOST_FRAMES));
  return Array.from({ length: frames }, (_, i) => ({ ...view, azimuth: view.azimuth - (360 * i) / frames }));
}
