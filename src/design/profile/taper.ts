/**
 * How the band narrows and thins from the top of the ring to its back.
 */
import { z } from "zod";
import { LARGEST_SIZE } from "./limits.js";

/** Places between top and back at which sizes may be given: more than a hand-made design has. Chosen. */
const MOST_PLACES = 24;

const width = z.number().positive().max(LARGEST_SIZE).optional();
const thickness = z.number().positive().max(LARGEST_SIZE).optional();

const placeSchema = z
  .strictObject({
    angle: z.number().min(0).max(360).describe("degrees from +x towards +y, 0 to 360; the top is 90"),
    width: width.describe("mm; default what the curve gives"),
    thickness: thickness.describe("mm; default what the curve gives"),
  })
  .refine((place) => place.width !== undefined || place.thickness !== undefined, "give a width, a thickness or both")
  .refine(({ angle }) => angle !== 90 && angle !== 270, {
    error: "the top has the profile's own sizes, and the back the taper's",
    path: ["angle"],
  });

export const taperSchema = z
  .strictObject({
    width: width.describe("At the back, mm, above 0; default as at the top."),
    thickness: thickness.describe("At the back, mm, above 0; default as at the top."),
    between: z
      .array(placeSchema)
      .max(MOST_PLACES)
      .default([])
      .describe(`Sizes between, at most ${MOST_PLACES}; given on one side alone, the other mirrors it; default none.`),
  })
  .refine(
    ({ between }) => new Set(between.map(({ angle }) => angle % 360)).size === between.length,
    "give each angle once",
  )
  .describe(
    "How the band narrows and thins from the top to the back, smoothly; the bore stays. Default: the same all round.",
  );

export type TaperSpec = z.output<typeof taperSchema>;
