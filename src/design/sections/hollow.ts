/**
 * A dish behind a rim: its fields.
 */
import { z } from "zod";
import { draftField, heightField, reachField, WALL_DEFAULTS } from "./fields.js";

export const hollowSectionSchema = z
  .strictObject({
    form: z.literal("hollow").describe('"hollow": dished, the middle lower than the rim'),
    height: heightField.describe("height of the rim above the seat, mm, above 0"),
    dip: z.number().positive().max(10).describe("by how much the middle is lower than the rim, mm, below the height"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.round)
      .describe("radius of the rim's outer edge, mm, at most the height; default 0"),
    rim: z.number().min(0).max(50).default(0).describe("width of the level rim behind its rounded edge, mm; default 0"),
    reach: reachField,
    draft: draftField,
  })
  .describe("A dish behind a rim.");

export type HollowSection = z.output<typeof hollowSectionSchema>;
