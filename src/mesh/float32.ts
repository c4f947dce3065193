/**
 * The mesh as single-precision files hold it.
 */
import { mergeRoundedPoints, roundDistinctPoints } from "./merge.js";
import type { Mesh } from "./mesh.js";

/**
 * Rounds every coordinate to the nearest float32 and merges points that have become equal. Nothing is dropped: a
 * triangle that collapsed now repeats a vertex, so that the gate sees it. A coordinate too large for float32 becomes
 * infinite. Where no two points are equal, the result has the same array of triangles.
 */
export function roundToFloat32(mesh: Mesh): Mesh {
  const distinct = roundDistinctPoints(mesh.positions);
  if (distinct !== undefined) return { positions: distinct, triangles: mesh.triangles };
  const { indexOf, positions } = mergeRoundedPoints(mesh.positions);
  const triangles = mesh.triangles.slice();
  for (let h = 0; h < triangles.length; h++) triangles[h] = indexOf[triangles[h]] ?? triangles[h];
  return { positions, triangles };
}
