/**
 * Whether a ring crosses itself.
 */
import type { GridPath } from "./grid.js";
import { type GridRegion, ringArea, unite } from "./polygons.js";

/** Relative difference of two areas that is rounding to the grid and no more. */
const SAME_AREA = 1e-5;

/**
 * A ring that does not cross itself encloses exactly its own signed area; any crossing makes the two differ.
 *
 * @param united what it covers, where that is known already: the ring alone, united by the nonzero rule
 */
export function crossesItself(ring: GridPath, united: GridRegion = unite([ring])): boolean {
  const signed = Math.abs(ringArea(ring));
  const covered = united.reduce((sum, part) => sum + ringArea(part), 0);
  return Math.abs(signed - covered) > SAME_AREA * Math.max(signed, covered);
}
