/**
 * A leaf: an SVG file, placed in the tile.
 */

import { z } from "zod";
import { type PlaceSpec, placeSchema } from "../art/art-place.js";
import { type TakeSpec, takeSchema } from "../art/svg-take.js";
import type { DrawingUnit } from "../path-schema.js";
import { unitField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface SvgShape {
  /** The file's name. */
  readonly svg: string;
  /** Default: all that is painted. */
  readonly take?: TakeSpec | undefined;
  /** Default: filling the tile, centred. */
  readonly place?: Partial<PlaceSpec> | undefined;
  /** Unit of the place. Default: the region's. */
  readonly unit?: DrawingUnit | undefined;
}

export const svgKind = {
  key: "svg",
  fields: () => ({
    svg: z.string().min(1).max(300).describe("SVG file in the design's folder or below"),
    take: takeSchema.optional(),
    place: placeSchema.optional(),
    unit: unitField,
  }),
} as const satisfies ShapeKind;
