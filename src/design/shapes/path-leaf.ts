/**
 * A leaf: path data, closed subpaths filled by its rule, open ones as lines.
 */
import { type DrawingUnit, fillRule, pathData } from "../path-schema.js";
import { unitField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface PathShape {
  /** SVG path data. */
  readonly path: string;
  /** Default: the region's. */
  readonly unit?: DrawingUnit | undefined;
  /** Default nonzero. */
  readonly fill?: "nonzero" | "evenodd" | undefined;
}

export const pathKind = {
  key: "path",
  fields: () => ({ path: pathData, unit: unitField, fill: fillRule.optional() }),
} as const satisfies ShapeKind;
