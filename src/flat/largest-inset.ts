/**
 * How far a region can be shrunk before nothing of it is left.
 */
import { largestWhere } from "../base/math/largest.js";
import { ringBox } from "./box.js";
import type { GridRegion } from "./polygons.js";

/** mm to which the distance is sought, and rounded down. */
const SOUGHT = 1e-3;

/**
 * The largest distance, mm, that leaves something.
 *
 * @param most one that leaves nothing, mm
 * @param scale grid steps in a millimetre
 * @param offsetBy the region grown by mm
 */
export function largestInset(
  region: GridRegion,
  most: number,
  scale: number,
  offsetBy: (mm: number) => GridRegion,
): number {
  const sides = region.map(ringBox).map(({ left, right, low, high }) => Math.min(right - left, high - low));
  const half = Math.max(...sides) / 2 / scale;
  const largest = largestWhere(0, Math.min(half, most), (d) => offsetBy(-d).length > 0, SOUGHT);
  return Math.floor(largest / SOUGHT) * SOUGHT;
}
