/**
 * Refuses outlines whose edges lie across each other so often that uniting them would stall: a union takes time for every
 * crossing, and n edges can cross n² times.
 */
import type { GridRegion } from "../polygons.js";
import { SVG_LIMITS, tooMuch } from "./limits.js";

/**
 * Counts pairs of edges whose boxes overlap, up to the limit. Edges are sorted along x and swept.
 *
 * @param weight how often each pair counts; default 1
 */
export function refuseTangled(rings: GridRegion, where: string, weight = 1): void {
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
  if (edges.length * edges.length * weight < 2 * SVG_LIMITS.pairs) return;
  edges.sort((a, b) => a.low - b.low);
  let pairs = 0;
  let looked = 0;
  for (let i = 0; i < edges.length; i++) {
    const { high, bottom, top } = edges[i];
    for (let j = i + 1; j < edges.length && edges[j].low < high; j++) {
      if (edges[j].bottom < top && edges[j].top > bottom) pairs += weight;
      if (pairs > SVG_LIMITS.pairs || ++looked > LOOKS * SVG_LIMITS.pairs) {
        throw tooMuch(
          "is too tangled: its lines lie across each other",
          `at most ${SVG_LIMITS.pairs} near pairs`,
          where,
        );
      }
    }
  }
}

/** Pairs that are only looked at cost less than those that overlap; so many times the limit is still within a blink. */
const LOOKS = 50;
