/**
 * Exact moments of outlines made of lines and arcs, and what Pappus's rules make of them.
 *
 * Green's theorem for the chords (∫ r dA = −½ ∮ r² dw), the handbook's circular segment for the arcs: its area is
 * R² (φ − sin φ) / 2, its moment about the centre ⅔ (R sin φ/2)³. V = 2π ∫ r dA, S = 2π ∫ r ds (Pappus).
 */
import { type Arc, type Segment, segmentEnd, segmentLength, segmentStart } from "../../base/math/curve.js";
import { TURN } from "../../base/units.js";
import type { ExactProfile } from "./outline.js";

export interface Moments {
  /** Enclosed area, mm², positive for counter-clockwise. Means something for closed outlines only. */
  readonly area: number;
  /** ∫ r dA, mm³. Closed outlines only. */
  readonly firstMomentR: number;
  /** Length of the curve, mm. */
  readonly length: number;
  /** ∫ r ds, mm². */
  readonly lengthMomentR: number;
}

/** The moments of a run of segments, r being the second coordinate. */
export function outlineMoments(segments: readonly Segment[]): Moments {
  let [area, firstMomentR, length, lengthMomentR] = [0, 0, 0, 0];
  for (const segment of segments) {
    const [w0, r0] = segmentStart(segment);
    const [w1, r1] = segmentEnd(segment);
    area -= ((w1 - w0) * (r0 + r1)) / 2;
    firstMomentR -= ((w1 - w0) * (r0 * r0 + r0 * r1 + r1 * r1)) / 6;
    const s = segmentLength(segment);
    length += s;
    if (segment.kind === "line") {
      lengthMomentR += (s * (r0 + r1)) / 2;
      continue;
    }
    const cap = capArea(segment);
    const middle = Math.sin(segment.start + segment.sweep / 2);
    const halfChord = segment.radius * Math.sin(segment.sweep / 2);
    area += cap;
    firstMomentR += cap * segment.centre[1] + (2 / 3) * halfChord ** 3 * middle;
    lengthMomentR += s * segment.centre[1] + 2 * segment.radius * Math.abs(halfChord) * middle;
  }
  return { area, firstMomentR, length, lengthMomentR };
}

/** Exact volume of the plain band, mm³. */
export function bandVolume(profile: Pick<ExactProfile, "outline">): number {
  return TURN * outlineMoments(profile.outline).firstMomentR;
}

/** Exact surface of the plain band, mm². */
export function bandSurface(profile: Pick<ExactProfile, "outline">): number {
  return TURN * outlineMoments(profile.outline).lengthMomentR;
}

/** Mean radius of the seat by its arc length, mm. */
export function meanSeatRadius(profile: Pick<ExactProfile, "seat">): number {
  const { length, lengthMomentR } = outlineMoments(profile.seat);
  return lengthMomentR / length;
}

/** Sweeps below this take the series, radians: φ − sin φ would lose digits, and ten terms are exact to rounding. */
const SERIES_BELOW = 1;

/** Signed area between an arc and its chord. */
function capArea({ radius, sweep }: Arc): number {
  return (radius * radius * lessSine(sweep)) / 2;
}

/** φ − sin φ. */
function lessSine(angle: number): number {
  if (Math.abs(angle) > SERIES_BELOW) return angle - Math.sin(angle);
  let term = angle ** 3 / 6;
  let sum = term;
  for (let n = 4; n < 20; n += 2) {
    term *= (-angle * angle) / (n * (n + 1));
    sum += term;
  }
  return sum;
}
