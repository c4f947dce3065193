/**
 * Closed polygons as lists of points: area, what they enclose, and the first place where one crosses or touches itself.
 */
import type { Point2 } from "./point.js";

/** Signed area, positive for counter-clockwise (Gauss's shoelace formula). */
export function polygonArea(points: readonly Point2[]): number {
  const [ox, oy] = points[0];
  let twice = 0;
  for (let i = 0; i < points.length; i++) {
    const [ax, ay] = points[i];
    const [bx, by] = points[(i + 1) % points.length];
    twice += (ax - ox) * (by - oy) - (bx - ox) * (ay - oy);
  }
  return twice / 2;
}

/** Whether a point lies inside a polygon, by the even-odd rule; on its border either may be said. */
export function encloses(polygon: readonly Point2[], [x, y]: Point2): boolean {
  let inside = false;
  for (let i = 0; i < polygon.length; i++) {
    const [[ax, ay], [bx, by]] = [polygon[i], polygon[(i + 1) % polygon.length]];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}

/**
 * A point where a closed polygon crosses or touches itself, or turns right back; undefined where it is simple.
 * Edges are sorted along x, and only those whose ranges overlap are compared.
 */
export function findCrossing(points: readonly Point2[]): Point2 | undefined {
  const count = points.length;
  const edges = points.map((a, i) => {
    const b = points[(i + 1) % count];
    return { i, a, b, low: Math.min(a[0], b[0]), high: Math.max(a[0], b[0]) };
  });
  for (const { a, b, i } of edges) {
    const c = points[(i + 2) % count];
    if (orientation(a, b, c) === 0 && (c[0] - b[0]) * (b[0] - a[0]) + (c[1] - b[1]) * (b[1] - a[1]) <= 0) return b;
  }
  edges.sort((p, q) => p.low - q.low || p.i - q.i);
  for (let m = 0; m < count; m++) {
    for (let n = m + 1; n < count && edges[n].low <= edges[m].high; n++) {
      const [p, q] = [edges[m], edges[n]];
      const apart = Math.abs(p.i - q.i);
      if (apart === 1 || apart === count - 1) continue;
      if (meet(p.a, p.b, q.a, q.b)) return meetingPoint(p.a, p.b, q.a, q.b);
    }
  }
  return undefined;
}

/** Positive where a, b, c turn left, negative right, 0 in line. */
function orientation(a: Point2, b: Point2, c: Point2): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function meet(a: Point2, b: Point2, c: Point2, d: Point2): boolean {
  if (Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1])) return false;
  if (Math.max(a[0], b[0]) < Math.min(c[0], d[0]) || Math.max(c[0], d[0]) < Math.min(a[0], b[0])) return false;
  const c1 = orientation(a, b, c);
  const d1 = orientation(a, b, d);
  const a1 = orientation(c, d, a);
  const b1 = orientation(c, d, b);
  return Math.sign(c1) * Math.sign(d1) <= 0 && Math.sign(a1) * Math.sign(b1) <= 0;
}

function meetingPoint(a: Point2, b: Point2, c: Point2, d: Point2): Point2 {
  const onC = orientation(a, b, c);
  const onD = orientation(a, b, d);
  const t = onC === onD ? 0 : onC / (onC - onD);
  return [c[0] + t * (d[0] - c[0]), c[1] + t * (d[1] - c[1])];
}
