/**
 * Heights on a regular grid over the seat.
 */

export interface HeightField {
  /** u of the first and of the last column, mm. */
  readonly left: number;
  readonly right: number;
  /** v of the first and of the last row, mm. */
  readonly low: number;
  readonly high: number;
  /** Steps along u and along v, multiples of `BLOCK`. */
  readonly columns: number;
  readonly rows: number;
  /** (columns + 1) · (rows + 1) heights, mm, row after row. Where the field repeats, the last column is the first again. */
  readonly heights: Float64Array;
  /** How often the field stands round the band; 1 where the pattern stops. */
  readonly copies: number;
  /** Whether the field begins anew after its last column. */
  readonly repeats: boolean;
  /** What is not above this is not there, mm. */
  readonly level: number;
}

/** Steps along the side of the largest squares whose flat surface is two triangles: a power of two. */
export const BLOCK = 8;

/** The least number of steps, a multiple of the block, that are no longer than wanted. */
export function stepsFor(length: number, step: number): number {
  return BLOCK * Math.max(1, Math.ceil(length / (BLOCK * step) - ROUNDING));
}

/** Rounding of a quotient that should be whole. */
const ROUNDING = 1e-9;
