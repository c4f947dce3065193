/**
 * The seat cut out of a cross-section's outline.
 */
import { reverseSegment, type Segment } from "../../base/math/curve.js";

/** The stretch of the outline from `first` to before `end`, from low w to high w: against the outline. */
export function seatOf(outline: readonly Segment[], [first, end]: readonly [first: number, end: number]): Segment[] {
  return outline.slice(first, end).reverse().map(reverseSegment);
}
