/**
 * The spacing solver: beads along one leg of a line, its part between two stops, each gap the same share of the local diameters.
 *
 * Neighbours i and i + 1 stand ρ (dᵢ + dᵢ₊₁) / 2 apart. A leg begins and ends with a bead, or at a corner that it
 * keeps away from: there its first bead stands ρ · d · f from the corner, f = 1 / (2 cos(turn / 2)), which is half a gap
 * from the corner's bisector, so that the gap over the corner is as wide in space as the others. For one size the beads
 * are ℓ / n apart; for a diameter that grows evenly from a to b they form the geometric sequence a (b / a)^(i / n).
 */
import { AnnuletError } from "../base/errors.js";

/** How a leg ends: with a bead, or clear of a corner by this many spacings. */
export type LegEnd = "bead" | { readonly clear: number };

export interface LegOptions {
  /** mm */
  readonly length: number;
  readonly ends: readonly [start: LegEnd, end: LegEnd];
  /** Diameter of bead `index` at arc length `s` of the leg, mm. */
  readonly diameterAt: (s: number, index: number) => number;
  /** Whether the diameter is the same everywhere; then the spacing is exact. */
  readonly constant: boolean;
}

/** Beads of one leg. */
export interface LegFit {
  /** Arc lengths of the beads from the leg's start, mm, rising; those at its ends included. */
  readonly places: readonly number[];
  readonly diameters: readonly number[];
  /** Mean distance between neighbours along the line, mm. */
  readonly spacing: number;
  /** ρ: spacing over local diameter. */
  readonly ratio: number;
}

/** Farthest that a bead keeps from a corner, in spacings: that of a turn of 151°. Sharper spikes keep no farther. */
const MOST_CLEAR = 2;

/** The end of a leg that keeps clear of a corner which turns by so much, radians. */
export function clearOf(turn: number): LegEnd {
  return { clear: Math.min(MOST_CLEAR, 1 / (2 * Math.cos(turn / 2))) };
}

/** Rounds that the spacing of graduated beads is corrected at most; a handful does unless diameters change within few beads. */
const MOST_ROUNDS = 2000;

/** Rounds in which places move the whole way, and by what share of it later, where moving the whole way swings. */
const BOLD_ROUNDS = 60;
const CAREFUL_SHARE = 0.3;

/** A place that moves by less than this share of the leg stands still. */
const STILL = 1e-13;

/** Spaces so many beads along a leg, those at its ends included. At least two between two beads, else one. */
export function fitLeg(count: number, { length, ends, diameterAt, constant }: LegOptions): LegFit {
  const [before, after] = ends.map(clearance);
  if (constant) {
    const units = count - 1 + before + after;
    const places = Array.from({ length: count }, (_, i) => (length * (i + before)) / units);
    const diameter = diameterAt(0, 0);
    const spacing = length / units;
    return { places, diameters: places.map(() => diameter), spacing, ratio: spacing / diameter };
  }
  let places = Array.from({ length: count }, (_, i) => (length * (i + before)) / (count - 1 + before + after));
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const diameters = places.map(diameterAt);
    const steps = diameters.map((d, i) => (i === 0 ? before * d : (diameters[i - 1] + d) / 2));
    const units = steps.reduce((sum, step) => sum + step, 0) + after * diameters[count - 1];
    let sum = 0;
    const next = steps.map((step) => {
      sum += step;
      return (length * sum) / units;
    });
    const change = Math.max(...next.map((s, i) => Math.abs(s - places[i])));
    const old = places;
    places = round < BOLD_ROUNDS ? next : next.map((s, i) => old[i] + CAREFUL_SHARE * (s - old[i]));
    if (change > STILL * length) continue;
    const ratio = length / units;
    const spacing = count > 1 ? (places[count - 1] - places[0]) / (count - 1) : ratio * diameters[0];
    return { places, diameters, spacing, ratio };
  }
  throw new AnnuletError({
    code: "beads-uneven",
    message: `${count} beads do not settle on a stretch of ${length.toFixed(3)} mm along which their size changes`,
    hint: "let the diameters change less, or along a longer line",
  });
}

/** In what steps the number of beads of a leg may change, so that symmetric legs stay symmetric. */
export interface CountRule {
  /** Beads but one come in multiples of this. */
  readonly step: number;
  /** Fewest such multiples. */
  readonly least: number;
}

/**
 * The number of beads that comes nearest to a pitch: 1 + step · max(least, round((U − clear) / step)), U the leg in
 * wanted spacings.
 *
 * @param wanted the leg's length in wanted spacings
 */
export function nearestCount(wanted: number, ends: LegOptions["ends"], { step, least }: CountRule): number {
  const units = wanted - clearance(ends[0]) - clearance(ends[1]);
  return 1 + step * Math.max(least, Math.round(units / step));
}

function clearance(end: LegEnd): number {
  return end === "bead" ? 0 : end.clear;
}
