/**
 * A shape grown or shrunk by a distance.
 */
import { z } from "zod";
import { ofField } from "./fields.js";
import type { ShapeKind } from "./kind.js";

/** Corners on the grown side. */
export const joinField = z.enum(["miter", "round"]);

export const OFFSET_DEFAULTS = { join: "miter" } as const;

export interface OffsetShape<Inner> {
  /** mm; below 0 inwards. */
  readonly offset: number;
  /** Default miter. */
  readonly join?: z.output<typeof joinField> | undefined;
  readonly of: Inner;
}

export const offsetKind = {
  key: "offset",
  fields: (shape: z.ZodType) => ({
    offset: z.number().min(-50).max(50).describe("how far it is grown, mm, -50 to 50; below 0 it is shrunk"),
    join: joinField.optional().describe("corners of what is grown: miter or round; default miter"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
