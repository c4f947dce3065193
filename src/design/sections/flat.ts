/**
 * A level top with its edge sharp, rounded or bevelled: its fields.
 */
import { z } from "zod";
import { draftField, heightField, WALL_DEFAULTS } from "./fields.js";

export const flatSectionSchema = z
  .strictObject({
    form: z.literal("flat").describe('"flat": a level top'),
    height: heightField.describe("height of the top above the seat, mm, above 0"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.round)
      .describe("radius of the top edge, mm; at most the height and half the narrowest width; default 0"),
    bevel: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.bevel)
      .describe("bevel of the top edge instead of a rounding, mm wide and high; limits as of `round`; default 0"),
    draft: draftField,
  })
  .refine(({ round, bevel }) => round === 0 || bevel === 0, { message: "give either round or bevel", path: ["bevel"] })
  .describe("A level top.");

export type FlatSection = z.output<typeof flatSectionSchema>;
