/**
 * A shape and its mirror image in a line.
 */
import type { z } from "zod";
import { type AxisPoints, axisField, ofField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface MirrorShape<Inner> {
  /** Two points of the mirror line, in the region's unit. */
  readonly mirror: AxisPoints;
  /** The shape it is done to. */
  readonly of: Inner;
}

export const mirrorKind = {
  key: "mirror",
  fields: (shape: z.ZodType) => ({
    mirror: axisField.describe("two points of the mirror line, region's unit"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
