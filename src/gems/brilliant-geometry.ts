/**
 * Lines, arcs and planes, as brilliants need them.
 */
import type { Arc } from "../base/math/curve.js";
import type { Point2, Point3 } from "../base/math/point.js";

/** Where two lines cross, each a point and a direction. They must not be parallel. */
export function lineCrossing(a: Point2, [ux, uy]: Point2, b: Point2, [vx, vy]: Point2): Point2 {
  const s = ((b[0] - a[0]) * vy - (b[1] - a[1]) * vx) / (ux * vy - uy * vx);
  return [a[0] + s * ux, a[1] + s * uy];
}

/** How many times `towards` leads from a point within an arc's circle onto that circle: the root of |from + s towards − c| = r. */
export function shareOnArc(from: Point2, towards: Point2, { centre, radius }: Arc): number {
  const [fx, fy] = [from[0] - centre[0], from[1] - centre[1]];
  const a = towards[0] * towards[0] + towards[1] * towards[1];
  const b = fx * towards[0] + fy * towards[1];
  const c = fx * fx + fy * fy - radius * radius;
  return (-b + Math.sqrt(b * b - a * c)) / a;
}

/** The height of the plane through three points over any place. */
export function planeThrough(a: Point3, b: Point3, c: Point3): (at: Point2) => number {
  const [ux, uy, uz] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const [vx, vy, vz] = [c[0] - a[0], c[1] - a[1], c[2] - a[2]];
  const area = ux * vy - uy * vx;
  const slopeX = (uz * vy - vz * uy) / area;
  const slopeY = (ux * vz - vx * uz) / area;
  return ([x, y]) => a[2] + slopeX * (x - a[0]) + slopeY * (y - a[1]);
}
