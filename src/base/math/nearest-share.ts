/**
 * Where a side comes nearest to a point.
 */

/**
 * Share of the side at which it comes nearest to a point, 0 (its start) to 1 (its end); 0 for a side of no length.
 *
 * @param px @param py the point, from the side's start
 * @param dx @param dy the side's end, from its start
 */
export function nearestShare(px: number, py: number, dx: number, dy: number): number {
  const square = dx * dx + dy * dy;
  return square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square));
}
