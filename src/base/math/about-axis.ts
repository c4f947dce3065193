/**
 * Turns about the z axis and mirrors that keep it, as five numbers: x' = a x + b y, y' = c x + d y, z' = e z. In numbers, since many
 * points are moved.
 */
import type { Point3 } from "./point.js";

export interface AboutAxis {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
}

/** The mirror in the plane z = 0. */
export const MIDDLE_MIRROR: AboutAxis = { a: 1, b: 0, c: 0, d: 1, e: -1 };

/** A turn by so many radians, counter-clockwise seen from +z. */
export function turnAbout(angle: number): AboutAxis {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { a: cos, b: -sin, c: sin, d: cos, e: 1 };
}

/** The mirror in the plane through the axis at an angle, radians. */
export function mirrorAt(angle: number): AboutAxis {
  const cos = Math.cos(2 * angle);
  const sin = Math.sin(2 * angle);
  return { a: cos, b: sin, c: sin, d: -cos, e: 1 };
}

/** Where a point is brought. */
export function broughtBy({ a, b, c, d, e }: AboutAxis, [x, y, z]: Point3): Point3 {
  return [a * x + b * y, c * x + d * y, e * z];
}
