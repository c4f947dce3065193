/**
 * A leaf: a motif of the catalogue, drawn in the tile.
 */
import { drawMotif, type MotifSpec, motifSchema } from "../motifs/index.js";
import type { ShapeNode } from "./shape-node.js";

export interface MotifShape {
  readonly motif: MotifSpec;
}

export const motifLeaf: ShapeNode<MotifShape> = {
  key: "motif",
  fields: () => ({ motif: motifSchema }),
  draw: ({ motif }, frame) =>
    frame.drawGenerated(drawMotif(motif, { aspect: frame.strip.aspect }, frame.place(".motif"))),
};
