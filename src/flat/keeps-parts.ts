/**
 * Whether a region that is shrunk keeps each of its parts in one piece, with all its holes.
 */

import type { GridPath } from "./grid.js";
import { Owners } from "./owners.js";
import { type GridRegion, ringArea } from "./polygons.js";

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
  const owners = new Owners(wide);
  const parts = owners.outers.map(() => ({ outers: 0, holes: 0 }));
  const tally = (ring: GridPath, count: 1 | -1) => {
    const owner = owners.ownerOf(ring);
    if (owner === undefined) return;
    if (ringArea(ring) > 0) parts[owner].outers += count;
    else parts[owner].holes += count;
  };
  for (const ring of wide) tally(ring, 1);
  for (const ring of narrow) tally(ring, -1);
  return parts.every(({ outers, holes }, i) => (outers === 0 && holes === 0) || !counts(owners.outers[i]));
}
