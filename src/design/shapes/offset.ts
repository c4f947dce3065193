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
  /** The shape it is done to. */
  readonly of: Inner;
}

export const offsetKind = {
  key: "offset",
  fields: (shape: z.ZodType) => ({
    offset: z.number().min(-50).max(50).describe("mm it is grown, -50 to 50; below 0 it shrinks"),
    join: joinField.optional().describe("corners; default miter"),
    of: ofField(shape),
  }),
} as const satisfies ShapeKind;
