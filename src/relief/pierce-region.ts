/**
 * A pierced region: its outline, and the outlines of its edges where they are broken.
 *
 * Breaking by a round of radius b widens the hole by b (1 − sin φ) at b (1 − cos φ) below the surface, φ from 0 to 90°.
 */
import { chordCount } from "../base/math/curve.js";
import { finish, type Pausing } from "../base/pausing.js";
import type { GridRegion } from "../flat/polygons.js";
import { offset } from "../flat/polygons.js";
import { repeatsOf, type Strip, steps } from "../flat/strip.js";
import { coarseBody } from "./coarse-body.js";
import type { FlatBody } from "./flat-body.js";
import { stackLevels } from "./section.js";

export interface HoleOptions {
  /** mm */
  readonly broken: number;
  readonly names: readonly string[];
  readonly path: string;
}

/**
 * The broken edge begins this far below the surface, mm: there it lies along it, and where the facets of both meet in the
 * file's single precision would decide on the outline.
 */
const LIP = 3e-3;

/** The outlines of the holes of a region. */
export function pierceRegion(strip: Strip, region: GridRegion, options: HoleOptions): FlatBody | undefined {
  return finish(piercingRegion(strip, region, options));
}

/** The same in pieces. */
export function* piercingRegion(strip: Strip, region: GridRegion, options: HoleOptions): Pausing<FlatBody | undefined> {
  if (region.length === 0) return undefined;
  return yield* coarseBody(strip, region, (bodies, outline) => pierceOutline(bodies, outline, options));
}

function* pierceOutline(strip: Strip, region: GridRegion, { broken, names, path }: HoleOptions): Pausing<FlatBody> {
  const count = broken === 0 ? 0 : chordCount(broken, Math.PI / 2, strip.artTolerance);
  const levels = Array.from({ length: count + 1 }, (_, i) => {
    const angle = count === 0 ? Math.PI / 2 : (Math.PI / 2) * (i / count);
    // The last one is the outline itself, to the step.
    const out = i === count ? 0 : broken * (1 - Math.sin(angle));
    return {
      rings: offset(region, steps(strip, out), "round", strip.arcTolerance),
      inset: -out,
      h: i === 0 ? Math.min(LIP, broken / 2) : broken * (1 - Math.cos(angle)),
    };
  });
  const { bands, outline, last, seam } = yield* stackLevels(strip, levels);
  return {
    mode: "pierced",
    names,
    path,
    made: `broken ${broken}`,
    upright: false,
    top: bands,
    surface: undefined,
    outline,
    throat: last,
    seam,
    period: undefined,
    copies: repeatsOf(strip),
    height: broken,
    rise: undefined,
    fade: undefined,
  };
}
