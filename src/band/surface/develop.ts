/**
 * The seat's surface at some height, laid flat as it measures: each row as long as it is round the band, and as far from
 * the next as it is across it.
 *
 *     u′ = λu(v) · u with λu(v) = (r(v) + h · n_r(v)) / R;   v′ = arc length of the curve at height h from v = 0
 *
 * A strip of the surface is not a plane, so this holds each row and the middle line u = 0 true, not the angles between.
 */
import type { Point2 } from "../../base/math/point.js";
import { TOP } from "../../base/units.js";
import type { BandSurface, SurfaceLine } from "./surface.js";

/** Maps (u, v) on the flat pattern, u from the line that stays straight, to where it lies on the developed surface; mm. */
export type Develop = (u: number, v: number) => Point2;

/** Steps across half the seat over which the curve at the height is measured: chords short by under 1e-6 of it. */
const STEPS = 500;

/** The development of the surface `height` mm above the seat, as it is at the top of the ring. */
export function developAt(wrap: BandSurface, height: number): Develop {
  const step = wrap.seatLength / 2 / STEPS;
  const line = wrap.lineAt(TOP);
  const lengths = { up: arcLengths(line, height, step), down: arcLengths(line, height, -step) };
  return (u, v) => {
    const [, r] = line.point(v, height);
    const along = v < 0 ? lengths.down : lengths.up;
    return [(u * r) / wrap.referenceRadius, Math.sign(v) * lengthAt(along, Math.abs(v) / step)];
  };
}

/** Arc length of the curve at the height at each step from the middle. */
function arcLengths(line: SurfaceLine, height: number, step: number): number[] {
  const lengths = [0];
  let before = line.point(0, height);
  for (let i = 1; i <= STEPS; i++) {
    const point = line.point(i * step, height);
    lengths.push(lengths[i - 1] + Math.hypot(point[0] - before[0], point[1] - before[1]));
    before = point;
  }
  return lengths;
}

/** The length at a share of steps, going on straight beyond the last. */
function lengthAt(lengths: readonly number[], at: number): number {
  const i = Math.min(Math.floor(at), lengths.length - 2);
  return lengths[i] + (at - i) * (lengths[i + 1] - lengths[i]);
}
