/**
 * A leaf: a shape that the pattern has under a name.
 */
import { z } from "zod";
import type { ShapeKind } from "./kind.js";

export interface NamedShape {
  /** Name in `pattern.shapes`. */
  readonly shape: string;
}

export const namedKind = {
  key: "shape",
  fields: () => ({ shape: z.string().min(1).max(200).describe("name in pattern.shapes") }),
} as const satisfies ShapeKind;
