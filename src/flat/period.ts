/**
 * Where a periodic region may be cut so that the cut itself makes no thin slices: midway in the widest span along the
 * strip in which no outline turns back.
 */
import type { GridPath } from "./grid.js";
import { clipAlong, type GridRegion } from "./polygons.js";
import type { Strip } from "./strip.js";

/**
 * The part of a region that matters: in a periodic strip one period from a quiet place in tile 0, and `margin` tiles
 * more on either side; in one that stops the span covered.
 */
export function takePeriod(strip: Strip, region: GridRegion, margin = 0): GridRegion {
  if (region.length === 0) return region;
  const { tile } = strip.grid;
  const height = region.reduce((most, ring) => ring.reduce((top, { y }) => Math.max(top, Math.abs(y)), most), 0);
  if (!strip.periodic) return clipAlong(region, ...strip.stretch, height + 1);
  const place = quietPlace(region, strip);
  const beyond = Math.round(margin * tile);
  return clipAlong(region, place - beyond, place + strip.period + beyond, height + 1);
}

/** The places are looked for in this stretch of the tile, so that at least a fifth of a tile lies on either side. */
const PLACES = [0.2, 0.8] as const;

/** x in the middle part of tile 0 that lies farthest from where any outline turns back along x, grid steps. */
function quietPlace(region: GridRegion, { grid: { tile }, period }: Strip): number {
  const turns = region.flatMap((ring) => turnsOf(ring)).map((x) => x - Math.floor(x / period) * period);
  const [first, last] = [PLACES[0] * tile, PLACES[1] * tile];
  const stops = [first, ...turns.filter((x) => x > first && x < last).sort((a, b) => a - b), last];
  let best = 1;
  for (let i = 2; i < stops.length; i++) if (stops[i] - stops[i - 1] > stops[best] - stops[best - 1]) best = i;
  return Math.round((stops[best] + stops[best - 1]) / 2);
}

/** x of the ring's vertices at which it does not go on in the same direction along x. */
function turnsOf(ring: GridPath): number[] {
  const found: number[] = [];
  for (let i = 0; i < ring.length; i++) {
    const [a, b, c] = [ring[(i + ring.length - 1) % ring.length], ring[i], ring[(i + 1) % ring.length]];
    if ((b.x - a.x) * (c.x - b.x) <= 0) found.push(b.x);
  }
  return found;
}
