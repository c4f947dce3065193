/**
 * Whether one surface of triangles is another's image under a motion of the flat seat: heights of images and textures.
 *
 * Every triangle must have its image among the others, corner for corner, so that neither a height nor a diagonal differs.
 * Triangles over a grid are as symmetric as its heights, since they are halved about blocks that are (`thin-out.ts`).
 */

import type { FlatTriangles } from "../art/image/flat-triangles.js";
import type { Point3 } from "../base/math/point.js";
import { AT_A_BREATH, BREATH, type Pausing } from "../base/pausing.js";
import { type Motion, movedAcross, movedAlong, turnsOver } from "../flat/motion.js";

/** Corners as far apart as this on the seat are one, mm: samples lie a thousand times farther apart. */
const SAME_PLACE = 1e-6;

/** Heights that differ by less are one, mm: rounding. A step of a picture of 16 bits is a thousand times as high. */
const SAME_HEIGHT = 1e-9;

export interface SurfaceImagesOptions {
  readonly motion: Motion;
  /** u of a surface's left side, and mm after which it comes again. */
  readonly left: number;
  readonly period: number;
}

/** In pieces. */
export function* isSurfaceImage(
  one: FlatTriangles,
  other: FlatTriangles,
  { motion, left, period }: SurfaceImagesOptions,
): Pausing<boolean> {
  const count = other.points.length;
  if (one.triangles.length !== other.triangles.length || one.points.length !== count) return false;
  const corners = new Corners(other.points);
  /** The third corner of each triangle by the first two, its least one first. */
  const thirds = new Map<number, number>();
  for (let i = 0; i < other.triangles.length; i += 3) {
    if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
    const [a, b, c] = fromLeast([other.triangles[i], other.triangles[i + 1], other.triangles[i + 2]]);
    thirds.set(a * count + b, c);
  }
  const back = turnsOver(motion);
  for (let i = 0; i < one.triangles.length; i += 3) {
    if (i % (3 * AT_A_BREATH) === 0) yield BREATH;
    const moved = [0, 1, 2].map((k) => {
      const [u, v, h] = one.points[one.triangles[i + k]];
      return [movedAlong(u, motion), movedAcross(v, motion), h] satisfies Point3;
    });
    // A corner on the seam stands at both ends: which one is meant is told by the triangle.
    const home = period * Math.floor(((moved[0][0] + moved[1][0] + moved[2][0]) / 3 - left) / period);
    const images = moved.map(([u, v, h]) => corners.find([u - home, v, h]));
    if (images.includes(-1)) return false;
    const [a, b, c] = fromLeast(back ? images.reverse() : images);
    if (thirds.get(a * count + b) !== c) return false;
    // Each is taken once: as many as there are, all are images.
    thirds.delete(a * count + b);
  }
  return true;
}

/** A triangle's corners in their order, the least number first. */
function fromLeast([a, b, c]: readonly number[]): readonly [number, number, number] {
  if (a < b && a < c) return [a, b, c];
  return b < c ? [b, c, a] : [c, a, b];
}

/** Finds the corner at a place. */
class Corners {
  readonly #points: FlatTriangles["points"];
  /** Corners by the square of the seat in which they lie. */
  readonly #squares = new Map<number, number>();

  constructor(points: FlatTriangles["points"]) {
    this.#points = points;
    for (const [i, [u, v]] of points.entries()) this.#squares.set(squareOf(u, v), i);
  }

  /** −1 where none is there. */
  find([u, v, h]: Point3): number {
    for (const du of STEPS) {
      for (const dv of STEPS) {
        const at = this.#squares.get(squareOf(u + du, v + dv));
        if (at === undefined) continue;
        const [pu, pv, ph] = this.#points[at];
        if (Math.hypot(pu - u, pv - v) <= SAME_PLACE && Math.abs(ph - h) <= SAME_HEIGHT) return at;
      }
    }
    return -1;
  }
}

/** To a square and to those beside it. */
const STEPS = [0, -SAME_PLACE, SAME_PLACE] as const;

/** Squares across a seat of 67 mm, so that both numbers of one pack into an exact double. */
const ACROSS = 2 ** 26;

function squareOf(u: number, v: number): number {
  return Math.round(u / SAME_PLACE) * ACROSS + Math.round(v / SAME_PLACE) + ACROSS / 2;
}
