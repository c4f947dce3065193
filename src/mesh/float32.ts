/**
 * The mesh as single-precision files hold it.
 */
import { mergeEqualPoints } from "./merge.js";
import type { Mesh } from "./mesh.js";

/**
 * Rounds every coordinate to the nearest float32 and merges points that have become equal. Nothing is dropped: a
 * triangle that collapsed now repeats a vertex, so that the gate sees it. A coordinate too large for float32 becomes
 * infinite.
 */
export function roundToFloat32(mesh: Mesh): Mesh {
  const { indexOf, positions } = mergeEqualPoints(mesh.positions.map(Math.fround));
  return { positions, triangles: mesh.triangles.map((vertex) => indexOf[vertex] ?? vertex) };
}
