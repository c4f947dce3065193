/**
 * Turns a ring to how it is printed and sets it down on z = 0.
 */

import { numberFrom, type OptionRules, requireOptions } from "../../base/options.js";
import { radians } from "../../base/units.js";
import { PRINT_RANGES, PRINT_STANCES, type PrintSettings } from "../../design/print-settings.js";
import { meshBounds } from "../../mesh/bounds.js";
import type { Mesh } from "../../mesh/mesh.js";
import { requireTriples } from "../../mesh/sound.js";
import { transformMesh } from "../../mesh/transform.js";

const RULES: OptionRules<Pick<PrintSettings, "stance" | "tilt">> = {
  stance: {
    holds: (value) => PRINT_STANCES.some((stance) => stance === value),
    allowed: PRINT_STANCES.join(", "),
    needed: true,
  },
  tilt: numberFrom(...PRINT_RANGES.tilt, "degrees"),
};

/** Degrees by which a stance turns about x: the top of the ring, +y, goes up. Undefined where nothing is moved. */
export function tiltOf({ stance, tilt }: Pick<PrintSettings, "stance" | "tilt">): number | undefined {
  return { built: undefined, lying: 0, standing: 90, tilted: tilt }[stance];
}

/**
 * The mesh as it is printed. The finger's axis is taken as z, as in every mesh that annulet builds; x and y of the ring's
 * middle stay where they are.
 *
 * @throws AnnuletError `mesh-malformed`, `option-missing`, `option-invalid`
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const tilted = layDown(mesh, { stance: "tilted", tilt: 35 }); // degrees from lying towards standing
 */
export function layDown(mesh: Mesh, settings: Pick<PrintSettings, "stance" | "tilt">): Mesh {
  requireTriples(mesh);
  requireOptions({ stance: settings?.stance, tilt: settings?.tilt }, RULES);
  const tilt = tiltOf(settings);
  if (tilt === undefined) return mesh;
  // A quarter turn's cosine is 0, not 6e-17.
  const [cos, sin] = tilt === 90 ? [0, 1] : [Math.cos(radians(tilt)), Math.sin(radians(tilt))];
  const turned = transformMesh(mesh, [1, 0, 0, 0, 0, cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1]);
  const { min } = meshBounds(turned);
  const { positions } = turned;
  for (let i = 2; i < positions.length; i += 3) positions[i] -= min[2];
  return turned;
}
