/**
 * Everything that any of the shapes covers, and all their lines.
 */
import type { z } from "zod";
import { shapeList } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface UnionShape<Inner> {
  /** Shapes that become one, 1 to 200. */
  readonly union: readonly Inner[];
}

export const unionKind = {
  key: "union",
  fields: (shape: z.ZodType) => ({ union: shapeList(shape, 1).describe("shapes that become one, 1 to 200") }),
} as const satisfies ShapeKind;
