/**
 * Completes a mesh that is open at a plane by its mirror image: points on the plane belong to both, so no gap can open.
 */
import type { Clipped } from "./clip.js";

export interface WithImage {
  readonly whole: Clipped;
  /** For each vertex of the mesh its image. */
  readonly imageOf: Int32Array;
}

/** A mesh and its image in a plane; the points that carry the plane's bit belong to both. */
export function addImage(
  { mesh, marks }: Clipped,
  bit: number,
  image: (x: number, y: number, z: number) => readonly [number, number, number],
): WithImage {
  const count = marks.length;
  const imageOf = new Int32Array(count);
  let total = count;
  for (let vertex = 0; vertex < count; vertex++) imageOf[vertex] = (marks[vertex] & bit) !== 0 ? vertex : total++;
  const positions = new Float64Array(3 * total);
  const allMarks = new Uint8Array(total);
  positions.set(mesh.positions);
  allMarks.set(marks);
  for (let vertex = 0; vertex < count; vertex++) {
    if (imageOf[vertex] === vertex) continue;
    const [x, y, z] = image(positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2]);
    const at = 3 * imageOf[vertex];
    positions[at] = x;
    positions[at + 1] = y;
    positions[at + 2] = z;
    allMarks[imageOf[vertex]] = marks[vertex];
  }
  const { length } = mesh.triangles;
  const triangles = new Uint32Array(2 * length);
  triangles.set(mesh.triangles);
  for (let i = 0; i < length; i += 3) {
    triangles[length + i] = imageOf[mesh.triangles[i]];
    triangles[length + i + 1] = imageOf[mesh.triangles[i + 2]];
    triangles[length + i + 2] = imageOf[mesh.triangles[i + 1]];
  }
  return { whole: { mesh: { positions, triangles }, marks: allMarks }, imageOf };
}
