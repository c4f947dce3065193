/**
 * Art cut off at the edge of a seat that is narrower than the pattern.
 */
import { type Chain, joinLines } from "./chains.js";
import type { GridPath } from "./grid.js";
import { clipLinesTo, type GridRegion, intersect, offset, subtract } from "./polygons.js";
import { halfAt, outlineRing } from "./seat-outline.js";
import { type Strip, steps } from "./strip.js";

/** Pieces of cut lines shorter than this are rounding, mm. */
const PIECE = 1e-3;

/** Where a region is cut off, mm. */
export interface SeatCut {
  /** Beyond the seat's edge; below 0 inside it. */
  readonly beyond: number;
  /** Half of the narrowest width that its rounded edges need: what the cut leaves narrower beside itself goes too. Default 0. */
  readonly need?: number;
}

/** What is narrow is looked for up to this share farther from the cut than it can lie: outlines meet the cut at a slant. */
const ZONE_SHARE = 1.2;

/** An outline comes back from its inside to within this, mm. */
const BACK_REACH = 2e-3;

/** What goes takes this much with it, mm, so that what it joined is clearly apart: more than what is closed as a hairline. */
const CLEAR = 0.01;

/** What of a region lies within the seat, cut off at its edge; all of it on a strip that knows no edge. */
export function withinSeat(strip: Strip, region: GridRegion, { beyond, need = 0 }: SeatCut): GridRegion {
  const { edge } = strip;
  if (edge === undefined || region.length === 0) return region;
  const seat = (by: number) => [outlineRing(edge, steps(strip, by))];
  const cut = intersect(region, seat(beyond));
  if (need === 0) return cut;
  const by = (rings: GridRegion, mm: number) => offset(rings, steps(strip, mm), "miter", strip.arcTolerance);
  const wide = by(by(cut, -need), need + BACK_REACH);
  const narrow = subtract(subtract(cut, wide), seat(beyond - 2 * need * ZONE_SHARE));
  const clear = by(by(narrow, -BACK_REACH), BACK_REACH + CLEAR);
  return clear.length === 0 ? cut : subtract(cut, clear);
}

/** What of lines lies within the seat. A loop that is cut becomes open lines. */
export function linesWithinSeat(strip: Strip, chains: readonly Chain[]): Chain[] {
  const { edge } = strip;
  if (edge === undefined) return [...chains];
  const seat = [outlineRing(edge, 0)];
  const reach = steps(strip, PIECE);
  const long = (path: GridPath) => path.some(({ x, y }) => Math.hypot(x - path[0].x, y - path[0].y) > reach);
  return chains.flatMap((chain) => {
    if (chain.points.every(({ x, y }) => Math.abs(y) <= halfAt(edge, x) + reach)) return [chain];
    const path = chain.closed ? [...chain.points, chain.points[0]] : chain.points;
    return joinLines(clipLinesTo([path], seat, "inside").filter(long), reach);
  });
}
