/**
 * What a motif is: a drawing in one tile, made by rule from a few numbers.
 *
 * It is drawn whole: the translations alone complete it to what its frieze group would.
 */
import type { MotifFacts, MotifParameters } from "../../design/motifs/facts.js";
import type { ShapeSpec } from "../../design/shapes/shape-spec.js";

/** What a motif may know of the tile that it is drawn in: x runs from 0 to 1, y over ± half of `aspect`. */
export interface MotifFrame {
  /** Height of the tile over its width. */
  readonly aspect: number;
}

/** A motif of the catalogue: what the document knows of it, and how it is drawn. */
export type Motif<Facts extends MotifFacts> = Facts & {
  /** The motif as a shape, in tile units. */
  draw(parameters: MotifParameters<Facts>, frame: MotifFrame): ShapeSpec;
};

/** A motif whose parameters are checked where they are read. */
export interface AnyMotif extends MotifFacts {
  draw(parameters: never, frame: MotifFrame): ShapeSpec;
}

/** Narrowest line and gap that motifs keep over the whole range of their parameters and aspects, share of the tile's width: 0.3 mm in a tile of 6 mm, the least that casts and polishes (common practice, no source). */
export const LEAST_DETAIL = 0.05;
