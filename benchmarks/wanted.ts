/**
 * What is wanted of the README's design on a quiet machine of two cores. The tables print it beside what was measured;
 * nothing fails by it.
 */
export const WANTED = {
  /** Times faster than one union of the whole ring by the reference. */
  mirrorRoad: 10,
  turnRoad: 6,
  everyExample: 3,
  /** Of a ring of 60 bead-set stones and 1 000 beads: its build over the README's design, and the reference over its union. */
  stonesOfLarge: 2,
  stonesUnion: 8,
  /** A build in a process that has built before, ms. */
  warmFull: 400,
  warmDraft: 60,
  /** `annulet make` from its start to its end, STL and report written, ms. */
  cold: 1500,
  /** CPU of the same, over that of node importing three. */
  coldOfThree: 9,
  /** Most resident memory of `annulet make` with two million triangles, bytes. */
  peak: 2e9,
  /** Triangles that it takes. */
  triangles: 2e6,
} as const;
