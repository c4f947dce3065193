/**
 * A pattern laid out: what is raised, sunk, pierced and beaded over one period.
 */
import type { BeadLines } from "../beads/bead-lines.js";
import type { HoleShape } from "../relief/hole.js";
import type { ReliefShape } from "../relief/section.js";

/** A completed pattern. */
export interface Pattern {
  readonly reliefs: readonly ReliefShape[];
  /** What is cut out, in order. */
  readonly carvings: readonly Carving[];
  readonly beadLines: readonly BeadLines[];
  /** Height of the highest region above the seat, mm; 0 where there is none. */
  readonly height: number;
  /** Equal units, tiles or cycles of them, that make the whole round: 1 where there is no pattern or it stops. */
  readonly repeats: number;
  /** Holes through the whole ring. */
  readonly holes: number;
}

/** Sunk and pierced regions that are cut at one time. */
export interface Carving {
  /** How many of the reliefs were there before, and are cut too. */
  readonly after: number;
  /** Their heights are depths. */
  readonly sunk: readonly SunkShape[];
  readonly pierced: readonly HoleShape[];
}

/** A sunk region: the shape to be cut out, upside down. */
export interface SunkShape extends ReliefShape {
  /** Where its depth stands in the document. */
  readonly path: string;
}
