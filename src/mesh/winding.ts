/**
 * How often a surface goes round a point: the sum of its triangles' solid angles over 4π (A. Jacobson, L. Kavan,
 * O. Sorkine-Hornung, Robust inside-outside segmentation using generalized winding numbers, 2013), each solid angle by
 * A. Van Oosterom and J. Strackee, The solid angle of a plane triangle, 1983.
 */
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "./mesh.js";

/**
 * The winding number of the triangles that `include` accepts, round a point that lies on none of them: 1 inside an
 * outward-facing solid, 0 outside it.
 */
export function windingNumber(mesh: Mesh, point: Point3, include: (triangle: number) => boolean = () => true): number {
  const { positions: p, triangles } = mesh;
  const [ox, oy, oz] = point;
  let sum = 0;
  for (let t = 0; t < triangles.length / 3; t++) {
    if (!include(t)) continue;
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ax = p[a] - ox;
    const ay = p[a + 1] - oy;
    const az = p[a + 2] - oz;
    const bx = p[b] - ox;
    const by = p[b + 1] - oy;
    const bz = p[b + 2] - oz;
    const cx = p[c] - ox;
    const cy = p[c + 1] - oy;
    const cz = p[c + 2] - oz;
    const la = Math.sqrt(ax * ax + ay * ay + az * az);
    const lb = Math.sqrt(bx * bx + by * by + bz * bz);
    const lc = Math.sqrt(cx * cx + cy * cy + cz * cz);
    const determinant = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const divisor =
      la * lb * lc +
      (ax * bx + ay * by + az * bz) * lc +
      (bx * cx + by * cy + bz * cz) * la +
      (cx * ax + cy * ay + cz * az) * lb;
    sum += 2 * Math.atan2(determinant, divisor);
  }
  return sum / (4 * Math.PI);
}
