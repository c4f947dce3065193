/**
 * Surfaces of triangles in (u, v, h), and the part of one that is there.
 */
import type { Point3 } from "../../base/math/point.js";
import { AT_A_BREATH, BREATH, finish, type Pausing } from "../../base/pausing.js";

/** Triangles over the seat, counter-clockwise seen from outside. */
export interface FlatTriangles {
  readonly points: readonly Point3[];
  /** Three indices a triangle. */
  readonly triangles: readonly number[];
}

/** Where to cut a surface. */
export interface CutOptions {
  /** Whether a point of the surface stays. */
  readonly stays: (point: number) => boolean;
  /** The point at which a side is cut, from one that stays to one that does not. */
  readonly cutAt: (stays: number, goes: number) => Point3;
}

/** The part of a surface whose points stay; sides to points that go are cut once, for both triangles on them. */
export function cutTriangles(surface: FlatTriangles, options: CutOptions): FlatTriangles {
  return finish(cuttingTriangles(surface, options));
}

/** The same in pieces. */
export function* cuttingTriangles(
  { points, triangles }: FlatTriangles,
  { stays, cutAt }: CutOptions,
): Pausing<FlatTriangles> {
  const kept: Point3[] = [];
  const slots = new Map<number, number>();
  const slotOf = (key: number, make: () => Point3) => {
    const known = slots.get(key);
    if (known !== undefined) return known;
    slots.set(key, kept.length);
    return kept.push(make()) - 1;
  };
  const own = (point: number) => slotOf(point, () => points[point]);
  const cut = (inside: number, outside: number) =>
    slotOf((inside + 1) * points.length + outside, () => cutAt(inside, outside));
  const faces: number[] = [];
  for (let i = 0; i < triangles.length; i += 3) {
    if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
    const corners = [triangles[i], triangles[i + 1], triangles[i + 2]];
    const count = corners.filter(stays).length;
    if (count === 0) continue;
    if (count === 3) {
      faces.push(...corners.map(own));
      continue;
    }
    // Turned so that the corner which differs from the others comes first.
    const first = corners.findIndex((corner) => stays(corner) === (count === 1));
    const [a, b, c] = [0, 1, 2].map((k) => corners[(first + k) % 3]);
    if (count === 1) faces.push(own(a), cut(a, b), cut(a, c));
    else {
      const [p, q, atB, atC] = [cut(b, a), cut(c, a), own(b), own(c)];
      // By the shorter diagonal, whatever the corners' order: so an image is parted as what it is an image of.
      if (squareBetween(kept[atB], kept[q]) <= squareBetween(kept[atC], kept[p])) faces.push(atB, atC, q, atB, q, p);
      else faces.push(atC, q, p, atC, p, atB);
    }
  }
  return { points: kept, triangles: faces };
}

function squareBetween([au, av, ah]: Point3, [bu, bv, bh]: Point3): number {
  return (au - bu) ** 2 + (av - bv) ** 2 + (ah - bh) ** 2;
}

/** The rings round a surface, with the surface on their left. */
export function bordersOf(surface: FlatTriangles): Point3[][] {
  return finish(findingBorders(surface));
}

/** The same in pieces. */
export function* findingBorders({ points, triangles }: FlatTriangles): Pausing<Point3[][]> {
  const count = points.length;
  const sides = new Set<number>();
  const eachSide = function* (visit: (from: number, to: number) => void): Pausing<void> {
    for (let i = 0; i < triangles.length; i++) {
      if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
      visit(triangles[i], triangles[i % 3 === 2 ? i - 2 : i + 1]);
    }
  };
  yield* eachSide((from, to) => sides.add(from * count + to));
  const next = new Map<number, number>();
  yield* eachSide((from, to) => {
    if (!sides.has(to * count + from)) next.set(from, to);
  });
  const rings: Point3[][] = [];
  for (const start of next.keys()) {
    const ring: Point3[] = [];
    for (let at: number | undefined = start; at !== undefined; ) {
      const to = next.get(at);
      next.delete(at);
      if (to !== undefined) ring.push(points[at]);
      at = to;
    }
    if (ring.length > 0) rings.push(ring);
  }
  return rings;
}
