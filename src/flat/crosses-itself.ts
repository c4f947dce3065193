/**
 * Whether a ring crosses itself.
 */
import type { GridPath } from "./grid.js";
import { ringArea, unite } from "./polygons.js";

/** Relative difference of two areas that is rounding to the grid and no more. */
const SAME_AREA = 1e-5;

/** A ring that does not cross itself encloses exactly its own signed area; any crossing makes the two differ. */
export function crossesItself(ring: GridPath): boolean {
  const signed = Math.abs(ringArea(ring));
  const covered = unite([ring]).reduce((sum, part) => sum + ringArea(part), 0);
  return Math.abs(signed - covered) > SAME_AREA * Math.max(signed, covered);
}
