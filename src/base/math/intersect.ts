/**
 * Where endless lines and full circles meet. Elementary analytic geometry.
 */
import type { Point2 } from "./point.js";

/** An endless line through `at` along a unit `direction`, or a full circle. */
export type Carrier =
  | { readonly kind: "line"; readonly at: Point2; readonly direction: Point2 }
  | { readonly kind: "circle"; readonly centre: Point2; readonly radius: number };

/** Directions whose sine is below this are parallel, without unit. */
const PARALLEL = 1e-12;

/** No, one or two points; curves that touch within rounding give the point twice. Parallel lines and equal circles: none. */
export function intersect(a: Carrier, b: Carrier): Point2[] {
  if (a.kind === "line") return b.kind === "line" ? lineLine(a.at, a.direction, b.at, b.direction) : lineCircle(a, b);
  return b.kind === "line" ? lineCircle(b, a) : circleCircle(a, b);
}

type LineCarrier = Extract<Carrier, { kind: "line" }>;
type CircleCarrier = Extract<Carrier, { kind: "circle" }>;

function lineLine(p: Point2, d: Point2, q: Point2, e: Point2): Point2[] {
  const cross = d[0] * e[1] - d[1] * e[0];
  if (Math.abs(cross) < PARALLEL) return [];
  const t = ((q[0] - p[0]) * e[1] - (q[1] - p[1]) * e[0]) / cross;
  return [[p[0] + t * d[0], p[1] + t * d[1]]];
}

function lineCircle({ at, direction: [dx, dy] }: LineCarrier, { centre, radius }: CircleCarrier): Point2[] {
  const along = (centre[0] - at[0]) * dx + (centre[1] - at[1]) * dy;
  const foot: Point2 = [at[0] + along * dx, at[1] + along * dy];
  return bothSides(foot, [dx, dy], radius, Math.hypot(foot[0] - centre[0], foot[1] - centre[1]));
}

function circleCircle(a: CircleCarrier, b: CircleCarrier): Point2[] {
  const [dx, dy] = [b.centre[0] - a.centre[0], b.centre[1] - a.centre[1]];
  const distance = Math.hypot(dx, dy);
  if (distance === 0) return [];
  const along = (distance + ((a.radius - b.radius) * (a.radius + b.radius)) / distance) / 2;
  const foot: Point2 = [a.centre[0] + (along * dx) / distance, a.centre[1] + (along * dy) / distance];
  return bothSides(foot, [-dy / distance, dx / distance], a.radius, Math.abs(along));
}

/** The two points of a circle on a line through `foot`, the line's nearest point to the centre, `distance` away from it. */
function bothSides(foot: Point2, [dx, dy]: Point2, radius: number, distance: number): Point2[] {
  const square = (radius - distance) * (radius + distance);
  if (square < -PARALLEL * radius * radius) return [];
  const half = Math.sqrt(Math.max(square, 0));
  return [
    [foot[0] + half * dx, foot[1] + half * dy],
    [foot[0] - half * dx, foot[1] - half * dy],
  ];
}
