/**
 * The first shape without what the others cover. Lines of the first are cut off where they run into the others.
 */
import type { z } from "zod";
import { shapeList } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface DifferenceShape<Inner> {
  /** The first without the others, 2 to 200. */
  readonly difference: readonly Inner[];
}

export const differenceKind = {
  key: "difference",
  fields: (shape: z.ZodType) => ({
    difference: shapeList(shape, 2).describe("the first without the others, 2 to 200"),
  }),
} as const satisfies ShapeKind;
