/**
 * A leaf: an SVG file, placed in the tile.
 */

import type { SvgShape } from "../../design/shapes/svg-leaf.js";
import { drawingKey } from "../svg/drawing-key.js";
import { drawingOf, readSvgArt } from "../svg-art.js";
import type { ShapeNode } from "./shape-node.js";

export const svgLeaf: ShapeNode<SvgShape> = {
  draw({ svg, take, place, unit }, frame) {
    const { strip, tolerance, budget, warn } = frame;
    const where = frame.place(".svg");
    const spec = { svg, place, unit: unit ?? frame.unit };
    const drawing = drawingOf(drawingKey({ svg, take }), frame.drawings, where);
    const drawn = readSvgArt(strip, spec, drawing, { tolerance, where, warn });
    budget.spend(drawn.closed, where);
    return drawn;
  },
};
