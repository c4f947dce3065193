/**
 * How far two convex bodies lie apart: E. Gilbert, D. Johnson, S. Keerthi, "A fast procedure for computing the distance between
 * complex objects in three-dimensional space", IEEE Journal of Robotics and Automation 4(2), 1988.
 *
 * A body is known by its farthest point in a direction alone, so circles are as exact as corners. The method walks on the set
 * of all differences of a point of one and a point of the other, towards its point nearest to the origin; what a step could
 * still gain bounds the error.
 */
import type { Point3 } from "./point.js";

/** A convex body. */
export interface Convex {
  /** Some point inside or on it. */
  readonly middle: Point3;
  /** Its farthest point in a direction, which need not be a unit vector. */
  readonly farthest: (direction: Point3) => Point3;
}

/** A point of the set of differences, with the two it is the difference of. */
export interface Difference {
  readonly at: Point3;
  readonly a: Point3;
  readonly b: Point3;
}

/** What was found of two bodies. */
export interface Apart {
  /** mm; 0 where they overlap or touch. */
  readonly distance: number;
  /** The nearest points of both; where they overlap, points near the overlap. */
  readonly from: Point3;
  readonly to: Point3;
  /** Differences that hold the origin between them where the bodies overlap; then four of them unless they touch. */
  readonly simplex: readonly Difference[];
}

/** The distance is known to this, mm. */
const EXACT = 1e-10;

/** Nearer than this, bodies touch, mm. */
const TOUCH = 1e-9;

/** Steps; twenty to thirty do for circles, fewer for corners. */
const MOST_STEPS = 200;

/** The least distance between two convex bodies. */
export function convexDistance(a: Convex, b: Convex): Apart {
  const towards = minus(b.middle, a.middle);
  // Bodies at one place are looked at along any line.
  const first = differenceIn(a, b, lengthOf(towards) === 0 ? [1, 0, 0] : towards);
  let simplex: readonly Weighted[] = [{ ...first, weight: 1 }];
  let nearest = simplex[0].at;
  for (let step = 0; step < MOST_STEPS; step++) {
    const length = lengthOf(nearest);
    if (length <= TOUCH || simplex.length === 4) return { ...pointsOf(simplex), distance: 0, simplex };
    const next = differenceIn(a, b, minus(ORIGIN, nearest));
    if (length - dot(nearest, next.at) / length <= EXACT) break;
    const found = nearestIn([...simplex, next]);
    const moved = sumOf(found.map(({ at, weight }) => scaled(at, weight)));
    // Rounding alone is left where a step gains nothing.
    if (found.length < 4 && lengthOf(moved) >= length) break;
    simplex = found;
    nearest = moved;
  }
  return { ...pointsOf(simplex), distance: lengthOf(nearest), simplex };
}

const ORIGIN: Point3 = [0, 0, 0];

/** The farthest difference in a direction. */
export function differenceIn(a: Convex, b: Convex, direction: Point3): Difference {
  const from = a.farthest(direction);
  const to = b.farthest(minus(ORIGIN, direction));
  return { at: minus(from, to), a: from, b: to };
}

interface Weighted extends Difference {
  readonly weight: number;
}

function pointsOf(simplex: readonly Weighted[]): Pick<Apart, "from" | "to"> {
  return {
    from: sumOf(simplex.map(({ a, weight }) => scaled(a, weight))),
    to: sumOf(simplex.map(({ b, weight }) => scaled(b, weight))),
  };
}

/** Every choice of up to three others, by the bits of its number. */
const CHOICES = Array.from({ length: 8 }, (_, i) => [0, 1, 2].filter((k) => (i >> k) & 1));

/**
 * The least choice of points whose mean, weighted, is the point nearest to the origin of all that lies between them: of every
 * choice with the last point, which the others do not do without, the foot of the origin, if it lies between its points; the
 * nearest of these.
 */
function nearestIn(points: readonly Difference[]): readonly Weighted[] {
  let best: readonly Weighted[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (const choice of CHOICES) {
    if (choice.some((i) => i + 1 >= points.length)) continue;
    const chosen = [...choice, points.length - 1].map((i) => points[i]);
    const weights = footWeights(chosen.map(({ at }) => at));
    if (weights === undefined || weights.some((weight) => weight < 0)) continue;
    const foot = sumOf(chosen.map(({ at }, i) => scaled(at, weights[i])));
    const length = lengthOf(foot);
    if (length >= least) continue;
    least = length;
    best = chosen.map((point, i) => ({ ...point, weight: weights[i] }));
  }
  return best;
}

/** Volumes, areas and lengths below this share of their points' sizes are flat: rounding. */
const FLAT = 1e-24;

/** Weights, sum 1, of the points whose mean is the foot of the origin on the flat through them; undefined where they are fewer in truth. */
function footWeights(points: readonly Point3[]): readonly number[] | undefined {
  const [p, ...others] = points;
  if (others.length === 0) return [1];
  const sides = others.map((q) => minus(q, p));
  const matrix = sides.map((s) => sides.map((t) => dot(s, t)));
  const right = sides.map((s) => -dot(s, p));
  const size = sides.reduce((product, s) => product * dot(s, s), 1);
  const whole = determinant(matrix);
  if (!(whole > FLAT * size)) return undefined;
  const weights = others.map((_, k) =>
    determinant(matrix.map((row, i) => row.map((value, j) => (j === k ? right[i] : value)))),
  );
  const shares = weights.map((weight) => weight / whole);
  return [1 - shares.reduce((sum, share) => sum + share, 0), ...shares];
}

/** Of one, two or three rows. */
function determinant(m: readonly (readonly number[])[]): number {
  if (m.length === 1) return m[0][0];
  if (m.length === 2) return m[0][0] * m[1][1] - m[0][1] * m[1][0];
  return (
    m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1]) -
    m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0]) +
    m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
  );
}

function minus([ax, ay, az]: Point3, [bx, by, bz]: Point3): Point3 {
  return [ax - bx, ay - by, az - bz];
}

function dot([ax, ay, az]: Point3, [bx, by, bz]: Point3): number {
  return ax * bx + ay * by + az * bz;
}

function scaled([x, y, z]: Point3, by: number): Point3 {
  return [x * by, y * by, z * by];
}

function sumOf(points: readonly Point3[]): Point3 {
  let [x, y, z] = [0, 0, 0];
  for (const point of points) {
    x += point[0];
    y += point[1];
    z += point[2];
  }
  return [x, y, z];
}

function lengthOf(point: Point3): number {
  return Math.sqrt(dot(point, point));
}
