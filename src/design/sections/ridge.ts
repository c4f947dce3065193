/**
 * A ridge: its fields.
 */
import { z } from "zod";
import { draftField, edgeRadiusField, heightField, wallField } from "./fields.js";

export const ridgeSectionSchema = z
  .strictObject({
    form: z.literal("ridge"),
    height: heightField
      .optional()
      .describe("height at the widest place, mm, above 0; narrower ones are lower; or give slope"),
    slope: z.number().min(1).max(85).optional().describe("slope of the flanks, degrees, 1 to 85, instead of height"),
    nose: z
      .number()
      .min(0)
      .max(10)
      .default(0)
      .describe("radius along the middle at the widest place, mm; narrower ones stay sharp; default 0"),
    wall: wallField,
    radius: edgeRadiusField,
    draft: draftField,
  })
  .refine(({ height, slope }) => (height === undefined) !== (slope === undefined), "give either height or slope")
  .describe("Flanks that meet in a line along the middle.");

export type RidgeSection = z.output<typeof ridgeSectionSchema>;
