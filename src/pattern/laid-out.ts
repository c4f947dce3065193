/**
 * A completed pattern: its bodies in the order of work, and the lines of its bead runs.
 */

import type { BeadLines } from "../beads/bead-lines.js";
import type { FlatBody } from "../relief/flat-body.js";

/** A completed pattern. */
export interface Pattern {
  /** In the order of work: what is cut goes through the band and what stands before it in the list. */
  readonly bodies: readonly FlatBody[];
  readonly beadLines: readonly BeadLines[];
  /** Height of the highest region above the seat, mm; 0 where there is none. */
  readonly height: number;
  /** Equal units, tiles or cycles of them, that make the whole round: 1 where there is no pattern or it stops. */
  readonly repeats: number;
  /** Holes through the whole ring. */
  readonly holes: number;
}
