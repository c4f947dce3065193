/**
 * A leaf: a motif of the catalogue, drawn in the tile.
 */
import { type MotifSpec, motifSchema } from "../motifs/motif.js";
import type { ShapeKind } from "./kind.js";

export interface MotifShape {
  readonly motif: MotifSpec;
}

export const motifKind = {
  key: "motif",
  fields: () => ({ motif: motifSchema }),
} as const satisfies ShapeKind;
