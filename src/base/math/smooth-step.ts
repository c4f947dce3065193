/**
 * The smooth step 3t² − 2t³.
 */

/** From 0 at 0 (and below) to 1 at 1 (and above), level at both ends; its curvature is at most 6. */
export function smoothStep(t: number): number {
  const inside = Math.min(1, Math.max(0, t));
  return inside * inside * (3 - 2 * inside);
}
