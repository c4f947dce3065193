/**
 * Inner corners of a solid that are sharp: edges on which the surface folds inward by more than an angle.
 */
import type { Point3 } from "../base/math/point.js";
import { buildEdgeTable, nextEdge } from "../mesh/edges.js";
import type { Mesh } from "../mesh/mesh.js";
import { unitFaceNormals } from "../mesh/normals.js";

export interface SharpCorners {
  /** Length of all sharp inner edges, mm. */
  readonly length: number;
  /** The middle of the edge that folds most, mm; undefined where none is sharp. */
  readonly sharpest: Point3 | undefined;
}

/**
 * Looks for edges whose faces fold inward.
 *
 * @param turn an edge is sharp where its faces turn by more than this, radians, 0 to π
 */
export function findSharpCorners(mesh: Mesh, turn: number): SharpCorners {
  const { positions: p, triangles } = mesh;
  const normals = unitFaceNormals(mesh);
  const { opposite } = buildEdgeTable(mesh);
  const limit = Math.cos(turn);
  let length = 0;
  let [least, sharpest] = [limit, -1];
  for (let h = 0; h < opposite.length; h++) {
    const back = opposite[h];
    if (back <= h) continue;
    const [a, b] = [3 * Math.floor(h / 3), 3 * Math.floor(back / 3)];
    const along = normals[a] * normals[b] + normals[a + 1] * normals[b + 1] + normals[a + 2] * normals[b + 2];
    if (along >= limit) continue;
    // Folded inward where the neighbour's far corner lies on the outer side of this face.
    const [start, far] = [3 * triangles[h], 3 * triangles[nextEdge(nextEdge(back))]];
    let out = 0;
    for (let k = 0; k < 3; k++) out += (p[far + k] - p[start + k]) * normals[a + k];
    if (out <= 0) continue;
    const end = 3 * triangles[nextEdge(h)];
    length += Math.hypot(p[end] - p[start], p[end + 1] - p[start + 1], p[end + 2] - p[start + 2]);
    if (along < least) [least, sharpest] = [along, h];
  }
  return { length, sharpest: sharpest < 0 ? undefined : middleOf(mesh, sharpest) };
}

function middleOf({ positions: p, triangles }: Mesh, h: number): Point3 {
  const [a, b] = [3 * triangles[h], 3 * triangles[nextEdge(h)]];
  return [(p[a] + p[b]) / 2, (p[a + 1] + p[b + 1]) / 2, (p[a + 2] + p[b + 2]) / 2];
}
