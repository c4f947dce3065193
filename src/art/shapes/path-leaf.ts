import type { PathShape } from "../../design/shapes/path-leaf.js";
import { fillPath } from "../../flat/fill-path.js";
import { LEAF_MORE_TILES, readArt } from "../read-art.js";
import type { ShapeNode } from "./shape-node.js";

export const pathLeaf: ShapeNode<PathShape> = {
  draw({ path, unit, fill }, frame) {
    const { strip, tolerance, budget, warn } = frame;
    const where = frame.place(".path");
    const source = { path, unit: unit ?? frame.unit };
    const { closed, open } = readArt(strip, source, tolerance, where, LEAF_MORE_TILES);
    budget.spend(open, where);
    budget.spendUnion(closed, where);
    return { closed: fillPath(closed, fill, where, warn), open };
  },
};
