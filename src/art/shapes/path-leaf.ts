/**
 * A leaf: path data, closed subpaths filled by its rule, open ones as lines.
 */

import { type DrawingUnit, drawingUnit, fillRule, pathData } from "../../design/path-schema.js";
import { fillPath } from "../../flat/fill-path.js";
import { LEAF_MORE_TILES, readArt } from "../read-art.js";
import type { ShapeNode } from "./shape-node.js";

export interface PathShape {
  /** SVG path data. */
  readonly path: string;
  /** Default: the region's. */
  readonly unit?: DrawingUnit | undefined;
  /** Default nonzero. */
  readonly fill?: "nonzero" | "evenodd" | undefined;
}

/** Unit of one leaf. */
export const unitField = drawingUnit
  .optional()
  .describe("unit of this path, or of this drawing's place: tile or mm; default the region's unit");

export const pathLeaf: ShapeNode<PathShape> = {
  key: "path",
  fields: () => ({ path: pathData, unit: unitField, fill: fillRule.optional() }),
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
