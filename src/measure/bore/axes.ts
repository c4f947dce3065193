/**
 * The axes that a ring's hole may lie along: those of the file, and the principal axis of inertia that stands alone.
 */
import type { Point3 } from "../../base/math/point.js";

export const FILE_AXES: readonly Point3[] = [
  [0, 0, 1],
  [0, 1, 0],
  [1, 0, 0],
];

/** Axes nearer to one of the file's than this are that one: over 10 mm they part by less than 2 µm. Cosine of the angle. */
const SAME_AXIS = Math.cos(1.5e-4);

/**
 * The principal axis whose moment differs most from the other two's, unless it is one of the file's: a ring is nearly the
 * same all round. Undefined where no moment stands out.
 */
export function loneAxis(inertia: readonly [Point3, Point3, Point3]): Point3 | undefined {
  const [low, middle, high] = principalAxes(inertia);
  const lone = middle.moment - low.moment > high.moment - middle.moment ? low : high;
  const apart = Math.max(middle.moment - low.moment, high.moment - middle.moment);
  if (!(apart > NO_DIFFERENCE * high.moment)) return undefined;
  return lone.axis.some((part) => Math.abs(part) >= SAME_AXIS) ? undefined : lone.axis;
}

/** Moments that differ by less are the same: all axes of a ball are alike. */
const NO_DIFFERENCE = 1e-6;

interface Principal {
  readonly moment: number;
  readonly axis: Point3;
}

/** Sweeps of a symmetric 3 × 3 matrix; convergence is quadratic, so that five or six do. */
const MOST_SWEEPS = 30;

/** Eigenvectors by C. Jacobi's rotations (G. Golub, C. Van Loan, Matrix Computations, § 8.5), lowest moment first. */
function principalAxes(inertia: readonly [Point3, Point3, Point3]): [Principal, Principal, Principal] {
  const a = inertia.map((row) => [...row]);
  const v = [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep++) {
    for (const [p, q] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ]) {
      if (a[p][q] === 0) continue;
      const theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
      const t = (theta < 0 ? -1 : 1) / (Math.abs(theta) + Math.hypot(theta, 1));
      const c = 1 / Math.hypot(t, 1);
      const s = t * c;
      for (let k = 0; k < 3; k++) [a[k][p], a[k][q]] = [c * a[k][p] - s * a[k][q], s * a[k][p] + c * a[k][q]];
      for (let k = 0; k < 3; k++) [a[p][k], a[q][k]] = [c * a[p][k] - s * a[q][k], s * a[p][k] + c * a[q][k]];
      for (let k = 0; k < 3; k++) [v[k][p], v[k][q]] = [c * v[k][p] - s * v[k][q], s * v[k][p] + c * v[k][q]];
    }
  }
  const [low, middle, high] = [0, 1, 2]
    .map((k): Principal => ({ moment: a[k][k], axis: [v[0][k], v[1][k], v[2][k]] }))
    .sort((one, other) => one.moment - other.moment);
  return [low, middle, high];
}
