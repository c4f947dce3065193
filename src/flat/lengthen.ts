/**
 * Makes a periodic region longer, where insets from its two ends would come near the cell.
 */
import { shiftPath } from "./grid.js";
import { takePeriod } from "./period.js";
import { type GridRegion, simplify, unite } from "./polygons.js";
import type { Strip } from "./strip.js";

/** Copies overlap by this share of a tile, so that their union leaves no seam. */
const OVERLAP = 0.1;

/** Grid steps within which the seam's vertices are dropped: rounding. */
const SEAM_STEPS = 3;

/** The region with at least `margin` grid steps of it on either side of one period and its neighbours. */
export function lengthen(strip: Strip, region: GridRegion, margin: number): GridRegion {
  const { tile } = strip.grid;
  const [low] = strip.complete;
  if (!strip.periodic || margin <= -low - tile || region.length === 0) return region;
  const one = takePeriod(strip, region, OVERLAP);
  const around = Math.ceil(margin / strip.period) + 1;
  const copies = Array.from({ length: 2 * around + 1 }, (_, i) => i - around);
  return simplify(unite(copies.flatMap((n) => one.map((ring) => shiftPath(ring, n * strip.period, 0)))), SEAM_STEPS);
}
