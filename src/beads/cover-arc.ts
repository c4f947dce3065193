/**
 * Where a run of beads goes that stops with the pattern: from one of its ends to the other, clear of both.
 */
import { AnnuletError } from "../base/errors.js";
import { degrees, showLength, TOP } from "../base/units.js";
import type { BeadRound } from "./bead-track.js";

/** A bead's centre keeps this many diameters from what stands at the pattern's ends: a tenth shows between them. */
const CLEAR_OF_WALL = 0.6;

/** From the end itself: the bead stands within what is covered. */
const CLEAR_OF_END = 0.5;

export interface CoverArcOptions {
  /** θ at which the pattern begins, radians; it ends as far on the other side of the top. */
  readonly startAngle: number;
  /** Largest diameter of the run's beads, mm. */
  readonly diameter: number;
  /** mm from the pattern's ends over which something stands on the seat, or from which on something does; undefined where nothing is. */
  readonly stop: number | undefined;
  /** Where the run stands in the document. */
  readonly path: string;
}

/**
 * θ of the first and of the last bead's centre, radians.
 *
 * @throws AnnuletError `bead-line-too-short` where the ends leave no room
 */
export function coverArc(
  at: BeadRound["at"],
  { startAngle, diameter, stop, path }: CoverArcOptions,
): readonly [from: number, to: number] {
  const clear = stop === undefined ? CLEAR_OF_END * diameter : stop + CLEAR_OF_WALL * diameter;
  const endAngle = 2 * TOP - startAngle;
  const from = startAngle + clear / at(startAngle).radius;
  const to = endAngle - clear / at(endAngle).radius;
  if (to > from) return [from, to];
  throw new AnnuletError({
    code: "bead-line-too-short",
    message: `the run should stop with the pattern, whose ${degrees(endAngle - startAngle).toFixed(1)}° are too few: its beads keep ${showLength(clear)} from either end`,
    path: `${path}.over`,
    value: "cover",
    allowed: '"band", or a wider cover',
    hint: "cover more of the band, or make the beads smaller",
  });
}
