/**
 * Where a region is narrowest: the place at which it comes apart, or a part of it or the wall of a hole is lost, when it
 * is shrunk ever further.
 */

import { ringBox } from "./box.js";
import type { GridPath } from "./grid.js";
import { clipWithin, type GridRegion, grow, offset, ringArea, shrink, subtract } from "./polygons.js";
import { clearRing, type Strip, steps } from "./strip.js";

/** mm on either side of the distance at which something is lost. */
const NUDGE = 1e-3;

/** The way back, in nudges: a little more than the two that were lost. Rounded, so that two tips do not meet again. */
const BACK_NUDGES = 2.05;
const ROUNDNESS = 0.01;

/** How far what is lost is grown before it is cut out, and how far its surroundings are looked at, in nudges. */
const CUT_NUDGES = 3;
const ROUND_NUDGES = 12;

/**
 * The middle of what is lost first, in tile coordinates: x from 0 to 1, y about the strip's middle line in tile widths.
 *
 * @param reach the largest distance that the region can be shrunk by without a loss, mm
 */
export function narrowestPlace(strip: Strip, region: GridRegion, reach: number): { x: number; y: number } {
  const nudge = steps(strip, NUDGE);
  const distance = steps(strip, reach);
  const before = shrink(region, Math.max(distance - nudge, 0), ROUNDNESS * nudge);
  const after = shrink(region, distance + nudge, ROUNDNESS * nudge);
  const lost = subtract(before, offset(after, BACK_NUDGES * nudge, "round", ROUNDNESS * nudge)).filter(
    (ring) => ringArea(ring) > 0 && clearRing(strip, ring),
  );
  const ring = lost.find((piece) => severs(before, piece, nudge)) ?? largest(lost) ?? region[0];
  const box = ringBox(ring);
  const { tile } = strip.grid;
  const x = (box.left + box.right) / (2 * tile);
  return { x: x - Math.floor(x), y: (box.low + box.high) / (2 * tile) };
}

/** Whether the region falls apart round the piece, or vanishes with it; at a tip it only becomes shorter. */
function severs(region: GridRegion, piece: GridPath, nudge: number): boolean {
  const around = clipWithin(region, ringBox(piece), ROUND_NUDGES * nudge);
  const parts = (rings: GridRegion) => rings.filter((ring) => ringArea(ring) > 0).length;
  return parts(subtract(around, grow([piece], CUT_NUDGES * nudge))) !== parts(around);
}

function largest(rings: GridRegion): GridPath | undefined {
  return rings.reduce<GridPath | undefined>(
    (best, ring) => (best === undefined || ringArea(ring) > ringArea(best) ? ring : best),
    undefined,
  );
}
