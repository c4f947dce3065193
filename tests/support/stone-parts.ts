/**
 * The steps of a design with stones that are placed by hand.
 */
import type { Warning } from "../../src/base/errors.js";
import { finish } from "../../src/base/pausing.js";
import { readDesign } from "../../src/design/read.js";
import { makeParts, type Parts } from "../../src/solids/parts.js";
import type { PlacedStone } from "../../src/stones/placed-stone.js";
import { FLAT_BAND } from "./set-stones.js";
import { bodiesOf } from "./stages.js";

/** @param document a design without stones; default a plain flat band */
export function stoneParts(
  stones: readonly PlacedStone[],
  document: object = FLAT_BAND,
): { readonly parts: Parts; readonly warnings: readonly Warning[] } {
  const { profile, wrap, pattern } = bodiesOf(document);
  const { tolerance, beads: beadRuns } = readDesign(document);
  const warnings: Warning[] = [];
  const warn = (warning: Warning) => {
    warnings.push(warning);
  };
  const parts = finish(makeParts({ profile, wrap, pattern, beadRuns, stones, tolerance, warn }));
  return { parts, warnings };
}
