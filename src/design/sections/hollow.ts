/**
 * A dish behind a rim: its fields.
 */
import { z } from "zod";
import { draftField, heightField, reachField, WALL_DEFAULTS } from "./fields.js";

export const hollowSectionSchema = z
  .strictObject({
    form: z.literal("hollow"),
    height: heightField.describe("height of the rim, mm, above 0"),
    dip: z.number().positive().max(10).describe("how much lower the middle is, mm, below the height"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.round)
      .describe("radius of its outer edge, mm, to the height; default 0"),
    rim: z.number().min(0).max(50).default(0).describe("width of the level rim, mm; default 0"),
    reach: reachField,
    draft: draftField,
  })
  .describe("A dish behind a rim.");

export type HollowSection = z.output<typeof hollowSectionSchema>;
