/**
 * Cubic Bézier curves: position and flattening.
 *
 * Number of chords: Wang's formula, as in G. Wang, "The subdivision method for finding the intersection between two
 * Bézier curves or surfaces" (1984), cited from memory: for degree n, ⌈√(n (n − 1) M / (8 tolerance))⌉ equal steps of the
 * parameter keep within tolerance, M being the longest second difference of the control points.
 */
import type { Point2 } from "./point.js";

/** A cubic Bézier curve from the first to the last of its four control points. */
export interface Cubic {
  readonly kind: "cubic";
  readonly points: readonly [Point2, Point2, Point2, Point2];
}

/** The cubic that is the same curve as a quadratic one, exactly. */
export function cubicFromQuadratic(from: Point2, control: Point2, to: Point2): Cubic {
  return { kind: "cubic", points: [from, towards(from, control), towards(to, control), to] };
}

/** The point at parameter `t`, 0 to 1. */
export function cubicPointAt(cubic: Cubic, t: number): Point2 {
  const [a, b, c, d] = cubic.points;
  const s = 1 - t;
  const at = (i: 0 | 1) => s * s * s * a[i] + 3 * s * s * t * b[i] + 3 * s * t * t * c[i] + t * t * t * d[i];
  return [at(0), at(1)];
}

/** How many chords, equal in the parameter, keep within `tolerance` of the curve. */
export function cubicChordCount(cubic: Cubic, tolerance: number): number {
  const [a, b, c, d] = cubic.points;
  const bend = Math.max(secondDifference(a, b, c), secondDifference(b, c, d));
  return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * tolerance))));
}

/** The points after the start, up to and with the end; no chord is further than `tolerance` from the curve. */
export function flattenCubic(cubic: Cubic, tolerance: number): Point2[] {
  const d = cubic.points[3];
  const count = cubicChordCount(cubic, tolerance);
  const points: Point2[] = [];
  for (let i = 1; i < count; i++) points.push(cubicPointAt(cubic, i / count));
  points.push(d);
  return points;
}

function secondDifference(a: Point2, b: Point2, c: Point2): number {
  return Math.hypot(a[0] - 2 * b[0] + c[0], a[1] - 2 * b[1] + c[1]);
}

/** Two thirds of the way, where degree elevation puts a quadratic's control point. */
function towards(end: Point2, control: Point2): Point2 {
  return [end[0] + (2 / 3) * (control[0] - end[0]), end[1] + (2 / 3) * (control[1] - end[1])];
}
