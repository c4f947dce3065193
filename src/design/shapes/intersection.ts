/**
 * What all the shapes cover together. Lines of the first are kept as far as they lie in all the others.
 */
import type { z } from "zod";
import { shapeList } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface IntersectionShape<Inner> {
  /** What all of them cover, 2 to 200; the first may be lines. */
  readonly intersection: readonly Inner[];
}

export const intersectionKind = {
  key: "intersection",
  fields: (shape: z.ZodType) => ({
    intersection: shapeList(shape, 2).describe("what all of them cover, 2 to 200; the first may be lines"),
  }),
} as const satisfies ShapeKind;
