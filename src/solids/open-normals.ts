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
export function requireOpenNormals({ positions, triangles }: Mesh, wrap: BandSurface, path: string): void {
  let most = Number.POSITIVE_INFINITY;
  let highest = 0;
  // Sides are looked at in their middles: their ends may lie where a hollow begins, and whatever spans it has some within.
  for (let i = 0; i < triangles.length; i++) {
    const [a, b] = [3 * triangles[i], 3 * triangles[i % 3 === 2 ? i - 2 : i + 1]];
    const h = (positions[a + 2] + positions[b + 2]) / 2;
    if (a > b || h <= 0) continue;
    const v = (positions[a + 1] + positions[b + 1]) / 2;
    const limit = (1 - LEAST_SHARE) * wrap.lineAt(wrap.angleAt(positions[a])).hollowAt(v);
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
