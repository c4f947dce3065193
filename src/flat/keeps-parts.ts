/**
 * Whether a region that is shrunk keeps each of its parts in one piece, with all its holes.
 */

import { ringBox } from "./box.js";
import type { GridPath } from "./grid.js";
import { contains, type GridRegion, ringArea } from "./polygons.js";

/**
 * Whether every part of `wide` that counts is still one part of `narrow`, with as many holes.
 *
 * @param narrow `wide` shrunk, in whole or in part
 * @param counts which parts are looked at, by their outer ring
 */
export function keepsParts(
  wide: GridRegion,
  narrow: GridRegion,
  counts: (outer: GridPath) => boolean = () => true,
): boolean {
  const parts = wide
    .filter((ring) => ringArea(ring) > 0)
    .map((ring) => ({ ring, area: ringArea(ring), box: ringBox(ring), outers: 0, holes: 0 }))
    .sort((a, b) => a.area - b.area);
  const tally = (ring: GridPath, count: 1 | -1) => {
    const area = ringArea(ring);
    const { x, y } = ring[0];
    const owner = parts.find(
      (part) =>
        part.area >= Math.abs(area) &&
        x >= part.box.left &&
        x <= part.box.right &&
        y >= part.box.low &&
        y <= part.box.high &&
        contains(part.ring, ring[0]),
    );
    if (owner === undefined) return;
    if (area > 0) owner.outers += count;
    else owner.holes += count;
  };
  for (const ring of wide) tally(ring, 1);
  for (const ring of narrow) tally(ring, -1);
  return parts.every((part) => (part.outers === 0 && part.holes === 0) || !counts(part.ring));
}
