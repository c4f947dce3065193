/**
 * The areas of a mesh's triangles.
 */
import type { Mesh } from "./mesh.js";

/** Area of each triangle, mm². */
export function triangleAreas({ positions: p, triangles }: Mesh): Float64Array {
  const areas = new Float64Array(triangles.length / 3);
  for (let t = 0; t < areas.length; t++) {
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    areas[t] = Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2) / 2;
  }
  return areas;
}
