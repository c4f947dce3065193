/**
 * The outline of a seat that is narrower in places than the pattern: a strip carries it where tiles keep their size on a band
 * that tapers, and art is cut off there.
 */
import type { GridPath, GridPoint } from "./grid.js";

/** How long the seat is, and where that is on a strip; mm. */
export interface SeatOutline {
  /** Lengths across at even steps once round, from the top of the ring. */
  readonly lengths: readonly number[];
  /** u once round, and u of the top, from the strip's beginning. */
  readonly round: number;
  readonly top: number;
  /** Whether u grows clockwise. */
  readonly mirrored: boolean;
}

/**
 * The seat's upper edge, y by x, grid steps; the lower one is its image.
 *
 * @param scale grid steps a mm
 * @param round grid steps once round
 * @param span from x to x at least
 */
export function upperEdge(
  { lengths, top, mirrored }: SeatOutline,
  {
    scale,
    round,
    span: [first, last],
  }: { readonly scale: number; readonly round: number; readonly span: readonly [number, number] },
): GridPath {
  const count = lengths.length;
  const middle = top * scale;
  const from = Math.floor(((first - middle) / round) * count);
  const to = Math.ceil(((last - middle) / round) * count);
  return Array.from({ length: to - from + 1 }, (_, i) => {
    const k = from + i;
    const turned = (((mirrored ? -k : k) % count) + count) % count;
    return { x: Math.round(middle + (k * round) / count), y: Math.round((lengths[turned] / 2) * scale) };
  });
}

/** Half the seat's length at x, by straight lines between the edge's points; grid steps. */
export function halfAt(edge: GridPath, x: number): number {
  let [low, high] = [0, edge.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (edge[middle].x <= x) low = middle;
    else high = middle;
  }
  const [a, b] = [edge[low], edge[high]];
  const share = Math.min(1, Math.max(0, (x - a.x) / (b.x - a.x)));
  return a.y + (b.y - a.y) * share;
}

/** The seat as a ring, its edges moved outward by some grid steps. */
export function outlineRing(edge: GridPath, by: number): GridPath {
  const moved = edge.map(({ x, y }): GridPoint => ({ x, y: Math.round(y + by) }));
  return [...moved.map(({ x, y }): GridPoint => ({ x, y: -y })), ...[...moved].reverse()];
}

/** Whether the seat is nowhere narrower than at the back, where a strip that goes all the way round begins. */
export function narrowestAtEnds({ lengths }: SeatOutline): boolean {
  const back = lengths[lengths.length / 2];
  return lengths.every((length) => length >= back);
}
