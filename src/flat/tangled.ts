/**
 * How often edges may lie across each other: a union takes time for every crossing, and n edges can cross n² times.
 */
import type { GridRegion } from "./polygons.js";

/** Pairs that are only looked at cost less than those that overlap; so many times the limit is still within a blink. */
const LOOKS = 50;

/**
 * Counts pairs of edges whose boxes overlap. Edges are sorted along x and swept.
 *
 * @param most where counting stops: the result is then Infinity
 */
export function nearPairs(rings: GridRegion, most: number): number {
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
  edges.sort((a, b) => a.low - b.low);
  let pairs = 0;
  let looked = 0;
  for (let i = 0; i < edges.length; i++) {
    const { high, bottom, top } = edges[i];
    for (let j = i + 1; j < edges.length && edges[j].low < high; j++) {
      if (edges[j].bottom < top && edges[j].top > bottom) pairs++;
      if (pairs > most || ++looked > LOOKS * most) return Number.POSITIVE_INFINITY;
    }
  }
  return pairs;
}
