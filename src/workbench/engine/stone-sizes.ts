/**
 * A stone by its size and by its weight, as the form tells both: by the published formulas, in the gem that the document names.
 */
import { gemsOf, type StoneInput, stoneOf } from "../../toolbox/index.js";

/** What is asked of a stone; own gems as the document has them. */
export interface StoneSizeAsking {
  readonly stone: StoneInput;
  readonly gems: unknown;
}

/** Both are told of one stone. */
export interface StoneSizes {
  /** mm: across, or the length of a long one. */
  readonly size: number;
  readonly carats: number;
}

/** Decimals of a size that follows from a weight, mm: no stone is ordered finer. */
const DIGITS = 2;

/** Undefined where there is no such stone: what is wrong is told by the ring. */
export function stoneSizes({ stone, gems }: StoneSizeAsking): StoneSizes | undefined {
  try {
    const all = [...gemsOf(Array.isArray(gems) ? gems : []).values()];
    const { length, carats } = stoneOf(stone, { gems: all });
    return { size: stone.size ?? Number(length.toFixed(DIGITS)), carats };
  } catch {
    return undefined;
  }
}
