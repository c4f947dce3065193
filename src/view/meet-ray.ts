/**
 * Where a ray meets a mesh first: all triangles are looked at, by numbers that stay in variables (1 ms for some 100 000).
 * The test is that of T. Möller and B. Trumbore, Fast, minimum storage ray/triangle intersection, 1997.
 */
import type { Point3 } from "../base/math/point.js";
import type { Buffers } from "../mesh/normals.js";

export interface Ray {
  readonly origin: Point3;
  /** Any length but none. */
  readonly direction: Point3;
}

/** Where a ray meets a mesh. */
export interface RayHit {
  readonly point: Point3;
  readonly triangle: number;
  /** From the ray's origin, in lengths of its direction. */
  readonly distance: number;
}

/** Where all of a place is kept: a · x + b · y + c · z + d at least 0; else it is cut away. */
export type Kept = readonly [a: number, b: number, c: number, d: number];

/** Least share of an edge's length by which a ray must not run along a triangle: rounding. */
const FLAT = 1e-14;

/**
 * The first triangle that a ray meets from outside; those seen from behind are passed, and what is cut away.
 *
 * @param kept default: nothing is cut away
 */
export function meetRay(buffers: Buffers, { origin, direction }: Ray, kept?: Kept): RayHit | undefined {
  const { positions: p, triangles } = buffers;
  const [ox, oy, oz] = origin;
  const [dx, dy, dz] = direction;
  let nearest = Number.POSITIVE_INFINITY;
  let triangle = -1;
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * triangles[t];
    const b = 3 * triangles[t + 1];
    const c = 3 * triangles[t + 2];
    const ax = p[a];
    const ay = p[a + 1];
    const az = p[a + 2];
    const ex = p[b] - ax;
    const ey = p[b + 1] - ay;
    const ez = p[b + 2] - az;
    const fx = p[c] - ax;
    const fy = p[c + 1] - ay;
    const fz = p[c + 2] - az;
    const hx = dy * fz - dz * fy;
    const hy = dz * fx - dx * fz;
    const hz = dx * fy - dy * fx;
    const facing = ex * hx + ey * hy + ez * hz;
    if (facing <= FLAT) continue;
    const sx = ox - ax;
    const sy = oy - ay;
    const sz = oz - az;
    const u = sx * hx + sy * hy + sz * hz;
    if (u < 0 || u > facing) continue;
    const qx = sy * ez - sz * ey;
    const qy = sz * ex - sx * ez;
    const qz = sx * ey - sy * ex;
    const v = dx * qx + dy * qy + dz * qz;
    if (v < 0 || u + v > facing) continue;
    const far = (fx * qx + fy * qy + fz * qz) / facing;
    if (far < 0 || far >= nearest) continue;
    if (kept !== undefined) {
      const side = kept[0] * (ox + far * dx) + kept[1] * (oy + far * dy) + kept[2] * (oz + far * dz) + kept[3];
      if (side < 0) continue;
    }
    nearest = far;
    triangle = t / 3;
  }
  if (triangle === -1) return undefined;
  return { point: [ox + nearest * dx, oy + nearest * dy, oz + nearest * dz], triangle, distance: nearest };
}

/** The corners of a triangle. */
export function cornersOf({ positions, triangles }: Buffers, triangle: number): readonly [Point3, Point3, Point3] {
  const corner = (k: number): Point3 => {
    const at = 3 * triangles[3 * triangle + k];
    return [positions[at], positions[at + 1], positions[at + 2]];
  };
  return [corner(0), corner(1), corner(2)];
}
