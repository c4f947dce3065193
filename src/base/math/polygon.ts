/**
 * Closed polygons as lists of points: area, what they enclose, and the first place where one crosses or touches itself.
 */
import type { Point2 } from "./point.js";
import { turnOf } from "./turn-of.js";

/** Where a polygon's points keep their coordinates. */
export interface PointReader<Point> {
  readonly x: (point: Point) => number;
  readonly y: (point: Point) => number;
}

/** What is asked of polygons of any kind of points. */
export interface Polygons<Point> {
  /** Signed area, positive for counter-clockwise (Gauss's shoelace formula). */
  readonly area: (polygon: readonly Point[]) => number;
  /** 1 where a point lies inside a polygon by the even-odd rule, 0 where it lies on its border, −1 outside. Exact. */
  readonly side: (polygon: readonly Point[], point: Point) => number;
}

/** The questions for points that are read so. */
export function polygonsOf<Point>({ x, y }: PointReader<Point>): Polygons<Point> {
  return {
    area(polygon) {
      if (polygon.length === 0) return 0;
      const [ox, oy] = [x(polygon[0]), y(polygon[0])];
      let twice = 0;
      for (let i = 0, last = polygon.length - 1; i < polygon.length; last = i++) {
        const [a, b] = [polygon[last], polygon[i]];
        twice += (x(a) - ox) * (y(b) - oy) - (x(b) - ox) * (y(a) - oy);
      }
      return twice / 2;
    },
    side(polygon, point) {
      const [px, py] = [x(point), y(point)];
      let side = -1;
      for (let i = 0, last = polygon.length - 1; i < polygon.length; last = i++) {
        const ay = y(polygon[last]);
        const by = y(polygon[i]);
        if ((ay > py && by > py) || (ay < py && by < py)) continue;
        const ax = x(polygon[last]);
        const bx = x(polygon[i]);
        if (ay === py && by === py) {
          if (px >= Math.min(ax, bx) && px <= Math.max(ax, bx)) return 0;
          continue;
        }
        const turn = turnOf(ax, ay, bx, by, px, py);
        if (turn === 0) return 0;
        // An edge counts with its lower end and without its upper one, where the point lies to the left of it.
        if (ay > py !== by > py && turn > 0 === by > ay) side = -side;
      }
      return side;
    },
  };
}

const pairs = polygonsOf<Point2>({ x: (point) => point[0], y: (point) => point[1] });

/** Signed area, positive for counter-clockwise. */
export function polygonArea(points: readonly Point2[]): number {
  return pairs.area(points);
}

/** Whether a point lies inside a polygon, by the even-odd rule; on its border it does not. */
export function encloses(polygon: readonly Point2[], point: Point2): boolean {
  return pairs.side(polygon, point) > 0;
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

function orientation(a: Point2, b: Point2, c: Point2): number {
  return turnOf(a[0], a[1], b[0], b[1], c[0], c[1]);
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
