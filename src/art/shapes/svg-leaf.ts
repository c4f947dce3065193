/**
 * A leaf: an SVG file, placed in the tile.
 */

import type { SvgShape } from "../../design/shapes/svg-leaf.js";
import { drawingOf, readSvgArt } from "../svg-art.js";
import type { ShapeNode } from "./shape-node.js";

export const svgLeaf: ShapeNode<SvgShape> = {
  draw({ svg, place, unit }, frame) {
    const { strip, tolerance, budget, warn } = frame;
    const where = frame.place(".svg");
    const spec = { svg, place, unit: unit ?? frame.unit };
    const drawn = readSvgArt(strip, spec, drawingOf(svg, frame.drawings, where), { tolerance, where, warn });
    budget.spend(drawn.closed, where);
    return drawn;
  },
};
