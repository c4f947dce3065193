/**
 * Angles of crown and pavilion, and the shares of the width that follow from them. Both are measured across the width, from the
 * girdle's edge straight to the table's or the culet's: of brilliants those of the main facets that stand there.
 */
import type { Proportions } from "./stone.js";

const RADIANS = Math.PI / 180;

/** Height of a crown by its angle in degrees, a share of the width: (1 − table) / 2 · tan. */
export function crownHeightAt(angle: number, table: number): number {
  return ((1 - table) / 2) * Math.tan(angle * RADIANS);
}

/** Depth of a pavilion by its angle in degrees, a share of the width: (1 − culet) / 2 · tan. */
export function pavilionDepthAt(angle: number, culet: number): number {
  return ((1 - culet) / 2) * Math.tan(angle * RADIANS);
}

/** The angle in degrees of a crown. */
export function crownAngleOf({ table, crownHeight }: Proportions): number {
  return Math.atan((2 * crownHeight) / (1 - table)) / RADIANS;
}

/** The angle in degrees of a pavilion. */
export function pavilionAngleOf({ culet, pavilionDepth }: Proportions): number {
  return Math.atan((2 * pavilionDepth) / (1 - culet)) / RADIANS;
}
