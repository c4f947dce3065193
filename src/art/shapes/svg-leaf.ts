/**
 * A leaf: an SVG file, placed in the tile.
 */
import { z } from "zod";
import type { DrawingUnit } from "../../design/path-schema.js";
import { type PlaceSpec, placeSchema } from "../svg/place.js";
import { drawingOf, readSvgArt } from "../svg-art.js";
import { unitField } from "./path-leaf.js";
import type { ShapeNode } from "./shape-node.js";

export interface SvgShape {
  /** The file's name. */
  readonly svg: string;
  /** Default: filling the tile, centred. */
  readonly place?: Partial<PlaceSpec> | undefined;
  /** Unit of the place. Default: the region's. */
  readonly unit?: DrawingUnit | undefined;
}

export const svgLeaf: ShapeNode<SvgShape> = {
  key: "svg",
  fields: () => ({
    svg: z
      .string()
      .min(1)
      .max(300)
      .describe("name of an SVG file; the command line looks in the design's folder and below"),
    place: placeSchema.optional(),
    unit: unitField,
  }),
  draw({ svg, place, unit }, frame) {
    const { strip, tolerance, budget, warn } = frame;
    const where = frame.place(".svg");
    const spec = { svg, place, unit: unit ?? frame.unit };
    const drawn = readSvgArt(strip, spec, drawingOf(svg, frame.drawings, where), tolerance, where, warn);
    budget.spend(drawn.closed, where);
    return drawn;
  },
};
