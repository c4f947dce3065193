/**
 * Whether what is raised on a hollow seat stays below the height at which the seat's normals meet: from there on its walls
 * would cross.
 */
import type { BandSurface } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";

/** A top is at least this share as wide as what it stands on; chosen: less than a twentieth is a blade. */
const LEAST_SHARE = 0.05;

/** Heights are told in whole µm. */
const TOLD = 1000;

/**
 * Checks a raised body, refined but still flat.
 *
 * @param path where the region stands in the document
 * @throws AnnuletError `height-too-large` with the most that fits there
 */
export function requireOpenNormals({ positions }: Mesh, wrap: BandSurface, path: string): void {
  let most = Number.POSITIVE_INFINITY;
  let highest = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const h = positions[i + 2];
    if (h <= 0) continue;
    const limit = (1 - LEAST_SHARE) * wrap.lineAt(wrap.angleAt(positions[i])).hollowAt(positions[i + 1]);
    if (h <= limit) continue;
    most = Math.min(most, limit);
    highest = Math.max(highest, h);
  }
  if (highest === 0) return;
  throw new AnnuletError({
    code: "height-too-large",
    message: `a region stands ${showLength(highest)} high in a hollow of the seat so tight that its walls meet below that height`,
    path,
    value: highest,
    allowed: `at most ${showLength(Math.floor(most * TOLD) / TOLD)} there`,
    hint: "make it lower, keep it off the hollow, or make the hollow wider or flatter",
  });
}
