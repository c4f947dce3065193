/**
 * A level top with its edge sharp, rounded or bevelled: its fields.
 */
import { z } from "zod";
import { draftField, heightField, WALL_DEFAULTS } from "./fields.js";

export const flatSectionSchema = z
  .strictObject({
    form: z.literal("flat"),
    height: heightField.describe("height of the top, mm, above 0"),
    round: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.round)
      .describe("radius of the top edge, mm, to the height and half the width; default 0"),
    bevel: z
      .number()
      .min(0)
      .max(5)
      .default(WALL_DEFAULTS.bevel)
      .describe("bevel instead, mm wide and high; limits as of `round`; default 0"),
    draft: draftField,
  })
  .refine(({ round, bevel }) => round === 0 || bevel === 0, { message: "give either round or bevel", path: ["bevel"] })
  .describe("A level top.");

export type FlatSection = z.output<typeof flatSectionSchema>;
