/**
 * The outline of a girdle: exact arcs and lines, counter-clockwise seen from above, and closed.
 */
import { type Arc, flattenSegment, type Segment, segmentLength, segmentStart } from "../base/math/curve.js";
import type { Point2 } from "../base/math/point.js";
import { polygonArea } from "../base/math/polygon.js";
import { ellipsePerimeter } from "./ellipse.js";

/** An outline; mm. */
export interface Outline {
  readonly segments: readonly Segment[];
  /** How often x is taken once the segments are drawn: 1, but of an oval, whose segments are a circle about the origin. */
  readonly stretch: number;
}

/**
 * The outline's corners, counter-clockwise, the first not repeated.
 *
 * @param tolerance mm, above 0: how far a chord may lie inside the outline
 */
export function outlinePoints({ segments, stretch }: Outline, tolerance: number): Point2[] {
  const fine = tolerance / Math.max(stretch, 1);
  const points = segments.flatMap((segment) => [segmentStart(segment), ...flattenSegment(segment, fine).slice(0, -1)]);
  return points.map(([x, y]): Point2 => [x * stretch, y]);
}

/** What it encloses, mm²: the polygon of the segments' ends and what each arc adds, r² (a − sin a) / 2 for an angle a. */
export function outlineArea({ segments, stretch }: Outline): number {
  const beyond = segments.map((segment) => (segment.kind === "arc" ? segmentOfCircle(segment) : 0));
  return (polygonArea(segments.map(segmentStart)) + beyond.reduce((sum, area) => sum + area, 0)) * stretch;
}

/** Its length, mm. */
export function outlinePerimeter({ segments, stretch }: Outline): number {
  const length = segments.reduce((sum, segment) => sum + segmentLength(segment), 0);
  if (stretch === 1) return length;
  const radius = length / (2 * Math.PI);
  return ellipsePerimeter(radius * stretch, radius);
}

function segmentOfCircle({ radius, sweep }: Arc): number {
  return (radius * radius * (sweep - Math.sin(sweep))) / 2;
}
