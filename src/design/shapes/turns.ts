/**
 * Copies turned about a point, evenly spread over a full turn, the drawn one among them.
 */
import { z } from "zod";
import type { Point2 } from "../../base/math/point.js";
import { ofField, pointField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface TurnsShape<Inner> {
  /** Copies in a full turn. */
  readonly turns: number;
  /** Default: the tile's middle. */
  readonly about?: Point2 | undefined;
  /** The shape that is copied. */
  readonly of: Inner;
}

export const turnsKind = {
  key: "turns",
  fields: (shape: z.ZodType) => ({
    turns: z.int().min(2).max(360).describe("copies in a full turn, 2 to 360"),
    about: pointField.optional().describe("point they turn about, region's unit; default the tile's middle"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
