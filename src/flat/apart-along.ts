/**
 * Many rings as lists that lie apart along the strip: no ring of one reaches over the x of another's, so that an operation on all
 * of them is that on each list by itself.
 */
import { ringBox } from "./box.js";
import type { GridPath } from "./grid.js";

/** Rings with fewer corners in all are one list: an operation on them takes some hundredths of a second. Chosen. */
const MANY_CORNERS = 20_000;

/** The lists from left to right, the rings of each in their order; one list where the rings are few or hang together. */
export function apartAlong(rings: readonly GridPath[]): (readonly GridPath[])[] {
  const corners = rings.reduce((sum, ring) => sum + ring.length, 0);
  if (corners < MANY_CORNERS) return [rings];
  const spans = rings.map((ring, order) => ({ ring, order, box: ringBox(ring) }));
  spans.sort((a, b) => a.box.left - b.box.left || a.order - b.order);
  const lists: (typeof spans)[] = [];
  let reached = Number.NEGATIVE_INFINITY;
  for (const span of spans) {
    // Rings that share an x alone may share a corner.
    if (span.box.left > reached) lists.push([]);
    lists[lists.length - 1].push(span);
    reached = Math.max(reached, span.box.right);
  }
  return lists.map((list) => list.sort((a, b) => a.order - b.order).map(({ ring }) => ring));
}
