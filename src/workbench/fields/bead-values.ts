/**
 * What makes a run come to one of the numbers of beads that it could have.
 */
import type { BeadChoice } from "../../index.js";
import type { Path } from "../state/json-text.js";

/** A pitch is the nearest that comes out even, so four digits are enough for any run of up to a thousand. */
const DIGITS = 1e4;

/** Writes the pitch of the choice; a count that is told goes, since either stands for the other. */
export function beadValues(run: Path, { ratio }: Pick<BeadChoice, "ratio">): (readonly [Path, unknown])[] {
  return [
    [[...run, "pitch"], Math.round(ratio * DIGITS) / DIGITS],
    [[...run, "count"], undefined],
  ];
}
