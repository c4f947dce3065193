/**
 * A leaf: a motif of the catalogue, drawn in the tile.
 */
import { type MotifSpec, motifSchema } from "../motifs/motif.js";
import type { ShapeKind } from "./kind.js";

export interface MotifShape {
  /** A motif of the catalogue with its parameters. */
  readonly motif: MotifSpec;
}

export const motifKind = {
  key: "motif",
  fields: () => ({ motif: motifSchema }),
} as const satisfies ShapeKind;
