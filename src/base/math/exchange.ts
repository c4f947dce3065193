/**
 * The point of the plane where the least of many linear functions is greatest: a linear programme in three unknowns, solved
 * by exchange (the dual simplex method; E. Remez's exchange for minimax problems, 1934). Three functions hold each other
 * down; while some other is lower at their point, it takes the place of one of them.
 */
import type { Point2 } from "./point.js";

/** h(s) = height + slope · s. */
export interface Plane {
  readonly height: number;
  /** Of length 1. */
  readonly slope: Point2;
}

export interface Summit {
  readonly at: Point2;
  readonly height: number;
}

/** Rounding of heights near 1, of which one exchange may be made in vain. */
const ROUNDING = 1e-14;

/** Exchanges after which rounding, not progress, keeps it going; fifty planes take about ten. */
const MOST_EXCHANGES = 500;

/**
 * The summit of the least of all planes, within about `reach` of the origin: beyond lie three steep planes as high as the
 * lowest at the origin plus the reach.
 *
 * @param planes at least one
 * @param reach above 0
 */
export function findSummit(planes: readonly Plane[], reach: number): Summit {
  const lowest = planes.reduce((least, { height }) => Math.min(least, height), Number.POSITIVE_INFINITY);
  const basis = [0, 1, 2].map((i): Plane => {
    const angle = (2 * Math.PI * i) / 3;
    return { height: lowest + reach, slope: [Math.cos(angle), Math.sin(angle)] };
  });
  const all = [...basis, ...planes];
  let shares = [1 / 3, 1 / 3, 1 / 3];
  let summit: Summit = { at: [0, 0], height: lowest + reach };
  for (let exchange = 0; exchange < MOST_EXCHANGES; exchange++) {
    const entering = lowestAt(all, summit.at);
    if (heightAt(entering, summit.at) >= summit.height - ROUNDING * Math.abs(summit.height)) break;
    // The slopes of the three, each with a 1 below it, in which the entering one is written.
    const rows = [0, 1, 2].map((k) => basis.map(({ slope }) => (k === 2 ? 1 : slope[k])));
    const parts = solve3(rows, [...entering.slope, 1]);
    if (parts === undefined) break;
    let leaving = -1;
    let step = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 3; i++) {
      if (parts[i] > ROUNDING && shares[i] / parts[i] < step) {
        step = shares[i] / parts[i];
        leaving = i;
      }
    }
    if (leaving === -1) break;
    shares = shares.map((share, i) => (i === leaving ? step : share - step * parts[i]));
    basis[leaving] = entering;
    const solved = solve3(
      basis.map(({ slope }) => [-slope[0], -slope[1], 1]),
      basis.map(({ height }) => height),
    );
    if (solved === undefined) break;
    summit = { at: [solved[0], solved[1]], height: solved[2] };
  }
  return summit;
}

function heightAt({ height, slope }: Plane, [x, y]: Point2): number {
  return height + slope[0] * x + slope[1] * y;
}

function lowestAt(planes: readonly Plane[], at: Point2): Plane {
  let lowest = planes[0];
  let least = heightAt(lowest, at);
  for (const plane of planes) {
    const height = heightAt(plane, at);
    if (height >= least) continue;
    least = height;
    lowest = plane;
  }
  return lowest;
}

/** Three equations by Cramer's rule; undefined where they have no single solution. */
function solve3(rows: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const whole = determinant(rows);
  if (whole === 0) return undefined;
  return [0, 1, 2].map(
    (k) => determinant(rows.map((row, i) => row.map((value, j) => (j === k ? right[i] : value)))) / whole,
  );
}

function determinant([a, b, c]: readonly (readonly number[])[]): number {
  return a[0] * (b[1] * c[2] - b[2] * c[1]) - a[1] * (b[0] * c[2] - b[2] * c[0]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
}
