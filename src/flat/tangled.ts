/**
 * How often edges may lie across each other: a union takes time for every crossing, and n edges can cross n² times.
 */
import type { GridPath } from "./grid.js";
import type { GridRegion } from "./polygons.js";

/** Pairs that are only looked at cost less than those that overlap; so many times the limit is still within a blink. */
const LOOKS = 50;

/**
 * Counts pairs of edges whose boxes overlap. Edges are sorted along x and swept.
 *
 * @param most where counting stops: the result is then Infinity
 */
export function nearPairs(rings: GridRegion, most: number): number {
  const { low, high, bottom, top } = boxesInOrder(rings);
  let pairs = 0;
  let looked = 0;
  for (let i = 0; i < low.length; i++) {
    const [right, under, over] = [high[i], bottom[i], top[i]];
    for (let j = i + 1; j < low.length && low[j] < right; j++) {
      if (bottom[j] < over && top[j] > under) pairs++;
      if (pairs > most || ++looked > LOOKS * most) return Number.POSITIVE_INFINITY;
    }
  }
  return pairs;
}

/** Boxes of edges, grid steps: side by side in arrays of numbers, as they are looked at by the million. */
interface EdgeBoxes {
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly bottom: Float64Array;
  readonly top: Float64Array;
}

/** The boxes of all edges, by their left sides. */
function boxesInOrder(rings: GridRegion): EdgeBoxes {
  const count = rings.reduce((sum, ring) => sum + ring.length, 0);
  const lefts = new Float64Array(count);
  const edges: (readonly [a: GridPath[number], b: GridPath[number]])[] = [];
  for (const ring of rings) {
    let a = ring[ring.length - 1];
    for (const b of ring) {
      lefts[edges.length] = Math.min(a.x, b.x);
      edges.push([a, b]);
      a = b;
    }
  }
  const order = Uint32Array.from(lefts.keys()).sort((i, j) => lefts[i] - lefts[j]);
  const boxes = {
    low: new Float64Array(count),
    high: new Float64Array(count),
    bottom: new Float64Array(count),
    top: new Float64Array(count),
  };
  order.forEach((edge, i) => {
    const [a, b] = edges[edge];
    boxes.low[i] = lefts[edge];
    boxes.high[i] = Math.max(a.x, b.x);
    boxes.bottom[i] = Math.min(a.y, b.y);
    boxes.top[i] = Math.max(a.y, b.y);
  });
  return boxes;
}
