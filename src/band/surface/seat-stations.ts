/**
 * The places across a surface at which its facets meet.
 */
import type { Segment } from "../../base/math/curve.js";
import { layPieces } from "./line.js";

/** v of the places where the seat changes from one curve to the next or its flattening has a vertex, mm. */
export function seatStations(seat: readonly Segment[], flatten: (segment: Segment, at: number) => number): number[] {
  const pieces = layPieces(seat);
  const half = pieces.reduce((sum, piece) => sum + piece.length, 0) / 2;
  return pieces.flatMap(({ segment, start, length }, i) => {
    const count = flatten(segment, i);
    const first = i === 0 ? 1 : 0;
    return Array.from({ length: count - first }, (_, k) => start + (length * (k + first)) / count - half);
  });
}
