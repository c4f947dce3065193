import type { MotifShape } from "../../design/shapes/motif-leaf.js";
import { drawMotif } from "../motifs/index.js";
import type { ShapeNode } from "./shape-node.js";

export const motifLeaf: ShapeNode<MotifShape> = {
  draw: ({ motif }, frame) =>
    frame.drawGenerated(drawMotif(motif, { aspect: frame.strip.aspect }, frame.place(".motif"))),
};
