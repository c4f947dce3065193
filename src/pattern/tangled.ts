/**
 * Whether edges lie across each other so often that uniting them would stall: a union takes time for every crossing, and
 * n edges can cross n² times.
 */
import type { GridRegion } from "./polygons.js";

/** Pairs that are only looked at cost less than those that overlap; so many times the limit is still within a blink. */
const LOOKS = 50;

/**
 * Counts pairs of edges whose boxes overlap, up to the limit. Edges are sorted along x and swept.
 *
 * @param most pairs that are let pass
 * @param weight how often each pair counts; default 1
 */
export function isTangled(rings: GridRegion, most: number, weight = 1): boolean {
  const edges: { low: number; high: number; bottom: number; top: number }[] = [];
  for (const ring of rings) {
    let a = ring[ring.length - 1];
    for (const b of ring) {
      edges.push({
        low: Math.min(a.x, b.x),
        high: Math.max(a.x, b.x),
        bottom: Math.min(a.y, b.y),
        top: Math.max(a.y, b.y),
      });
      a = b;
    }
  }
  if (edges.length * edges.length * weight < 2 * most) return false;
  edges.sort((a, b) => a.low - b.low);
  let pairs = 0;
  let looked = 0;
  for (let i = 0; i < edges.length; i++) {
    const { high, bottom, top } = edges[i];
    for (let j = i + 1; j < edges.length && edges[j].low < high; j++) {
      if (edges[j].bottom < top && edges[j].top > bottom) pairs += weight;
      if (pairs > most || ++looked > LOOKS * most) return true;
    }
  }
  return false;
}
