/**
 * How long the seat is across the band, all round.
 */
import { TOP, TURN } from "../base/units.js";
import type { Band } from "./band.js";

/** Fewest and most angles: enough that no place where a size is given is missed, and no more than facets go round (chosen). */
const FEWEST = 96;
const MOST = 1536;

/** Share of the tolerance by which straight lines between the lengths may miss half of them (chosen). */
const SHARE = 0.1;

/**
 * The seat's length, mm, at even angles from the top on, counter-clockwise once round: as many as make straight lines between
 * them true to the tolerance, mm, 96 to 1536.
 */
export function seatLengths(band: Pick<Band, "sectionAt">, tolerance: number): readonly number[] {
  const at = (share: number) => band.sectionAt(TOP + TURN * share).seatLength;
  let lengths = Array.from({ length: FEWEST }, (_, k) => at(k / FEWEST));
  for (;;) {
    const count = lengths.length;
    if (count >= MOST) return lengths;
    const between = lengths.map((_, k) => at((k + 0.5) / count));
    const most = lengths.reduce((worst, length, k) => {
      const next = lengths[(k + 1) % count];
      return Math.max(worst, Math.abs(between[k] - (length + next) / 2) / 2);
    }, 0);
    if (most <= SHARE * tolerance) return lengths;
    lengths = lengths.flatMap((length, k) => [length, between[k]]);
  }
}
