/**
 * The part of a shape on one side of a line, which goes on straight beyond its ends.
 */
import { z } from "zod";
import { pathData } from "../path-schema.js";
import { ofField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

export interface TrimShape<Inner> {
  /** The cut along a line. */
  readonly trim: {
    /** SVG path data of one open line. */
    readonly along: string;
    /** As one walks along the line, y being up. */
    readonly keep: "left" | "right";
  };
  /** The shape it is done to. */
  readonly of: Inner;
}

export const trimKind = {
  key: "trim",
  fields: (shape: z.ZodType) => ({
    trim: z
      .strictObject({
        along: pathData.describe("one open line as SVG path data, region's unit; it goes on straight at its ends"),
        keep: z.enum(["left", "right"]).describe("side that is kept, walking along the line"),
      })
      .describe("cuts it along a line"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
