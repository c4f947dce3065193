/**
 * A shape and its glide image: mirrored in a line and moved along it.
 */
import { z } from "zod";
import { type AxisPoints, axisField, ofField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface GlideShape<Inner> {
  /** Two points of the glide line, in the region's unit. */
  readonly glide: AxisPoints;
  /** In the region's unit. */
  readonly by: number;
  /** The shape it is done to. */
  readonly of: Inner;
}

export const glideKind = {
  key: "glide",
  fields: (shape: z.ZodType) => ({
    glide: axisField.describe("two points of the glide line, region's unit"),
    by: z
      .number()
      .min(-1000)
      .max(1000)
      .describe("how far it moves along the line, towards the second point, region's unit"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
