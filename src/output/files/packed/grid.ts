/**
 * The grid on which a packed mesh stands, and where its next corner is expected.
 */

/** What is needed to read a packed mesh. */
export interface Grid {
  readonly vertices: number;
  readonly triangles: number;
  /** Corners that are told by their number. */
  readonly far: number;
  /** Between neighbours on the grid, mm. */
  readonly step: number;
  /** The place of 0, 0, 0, mm. */
  readonly origin: readonly [number, number, number];
}

/**
 * Where a corner is expected: across an edge from the corner beyond it, as in a parallelogram; with all three the same, there.
 *
 * @param places steps of the grid, x, y, z of each vertex in turn
 */
export function predicted(places: ArrayLike<number>, from: number, to: number, beyond: number, axis: number): number {
  if (from < 0) return 0;
  return places[3 * from + axis] + places[3 * to + axis] - places[3 * beyond + axis];
}

/** 0, −1, 1, −2, 2 … as 0, 1, 2, 3, 4 …: small either way stays small. */
export function zigzag(value: number): number {
  return value < 0 ? -2 * value - 1 : 2 * value;
}

export function unzigzag(value: number): number {
  return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
}
