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

/**
 * v of places as near to each other as the most bent curve of any of several seats asks for, mm: where v is arc length on all
 * of them, one's curves do not end where another's do.
 *
 * @param flatten chords that a curve takes
 */
export function evenStations(seats: readonly (readonly Segment[])[], flatten: (segment: Segment) => number): number[] {
  const all = seats.map(layPieces);
  const half = Math.max(...all.map((pieces) => pieces.reduce((sum, { length }) => sum + length, 0))) / 2;
  const bent = all.flat().filter(({ segment }) => segment.kind !== "line");
  if (bent.length === 0) return [];
  const step = bent.reduce((least, { segment, length }) => Math.min(least, length / flatten(segment)), 2 * half);
  const count = Math.ceil(half / step);
  return Array.from({ length: 2 * count - 1 }, (_, i) => (half * (i + 1 - count)) / count);
}
