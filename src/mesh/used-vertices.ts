/**
 * A mesh without the vertices that no triangle uses.
 */
import type { Mesh } from "./mesh.js";

/** The mesh with used vertices alone, in their order; the same mesh where all are. */
export function usedVertices(mesh: Mesh): Mesh {
  const { positions, triangles } = mesh;
  const slot = new Int32Array(positions.length / 3).fill(-1);
  for (let i = 0; i < triangles.length; i++) slot[triangles[i]] = 0;
  let used = 0;
  for (let vertex = 0; vertex < slot.length; vertex++) if (slot[vertex] === 0) slot[vertex] = used++;
  if (used === slot.length) return mesh;
  const kept = new Float64Array(3 * used);
  for (let vertex = 0; vertex < slot.length; vertex++) {
    if (slot[vertex] !== -1) kept.set(positions.subarray(3 * vertex, 3 * vertex + 3), 3 * slot[vertex]);
  }
  return { positions: kept, triangles: triangles.map((vertex) => slot[vertex]) };
}
