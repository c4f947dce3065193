/**
 * A smooth curve of one value over the whole round, through given places.
 *
 * A periodic cubic spline by pieces of Hermite form, whose slope at a place is 0 where the value turns there and else the
 * weighted harmonic mean of the slopes on both sides (Fritsch and Butland, "A method for constructing local monotone
 * piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5, 1984). It is continuous with its slope and never leaves
 * the range of the two places about it. Through two places it is the smooth step 3t² − 2t³, there and back.
 */
import { TURN } from "../units.js";

/** A place of the curve. */
export interface RoundPlace {
  /** Radians. */
  readonly angle: number;
  readonly value: number;
}

/** The curve through the places, one or more, at different angles in any order. */
export function roundCurve(places: readonly RoundPlace[]): (angle: number) => number {
  const knots = places.map(({ angle, value }) => ({ at: wrapped(angle), value })).sort((a, b) => a.at - b.at);
  const count = knots.length;
  if (knots.every(({ value }) => value === knots[0].value)) return () => knots[0].value;
  const steps = knots.map(({ at }, i) => (i + 1 < count ? knots[i + 1].at : knots[0].at + TURN) - at);
  const secants = knots.map(({ value }, i) => (knots[(i + 1) % count].value - value) / steps[i]);
  const slopes = knots.map((_, i) => {
    const before = (i + count - 1) % count;
    return slopeBetween([steps[before], secants[before]], [steps[i], secants[i]]);
  });
  return (angle) => {
    const at = wrapped(angle);
    let i = count - 1;
    for (let k = 0; k < count && knots[k].at <= at; k++) i = k;
    const along = at - knots[i].at;
    const t = (along < 0 ? along + TURN : along) / steps[i];
    const next = (i + 1) % count;
    const [square, cube] = [t * t, t * t * t];
    return (
      (2 * cube - 3 * square + 1) * knots[i].value +
      (cube - 2 * square + t) * steps[i] * slopes[i] +
      (3 * square - 2 * cube) * knots[next].value +
      (cube - square) * steps[i] * slopes[next]
    );
  };
}

/** The slope at a place from the steps and secants on both sides of it. */
function slopeBetween(
  [h0, d0]: readonly [step: number, secant: number],
  [h1, d1]: readonly [step: number, secant: number],
): number {
  if (d0 * d1 <= 0) return 0;
  const [w0, w1] = [2 * h1 + h0, h1 + 2 * h0];
  return (w0 + w1) / (w0 / d0 + w1 / d1);
}

/** The angle from 0 to under one turn. */
function wrapped(angle: number): number {
  const turned = angle - TURN * Math.floor(angle / TURN);
  return turned >= TURN ? 0 : turned;
}
