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
    angle: z
      .number()
      .min(0)
      .max(360)
      .describe("degrees on the ring, 0 to 360, counter-clockwise seen from +z; the top is 90, the back 270"),
    width: width.describe("width of the band there, mm; default what the curve gives"),
    thickness: thickness.describe("thickness there, mm; default what the curve gives"),
  })
  .refine((place) => place.width !== undefined || place.thickness !== undefined, "give a width, a thickness or both")
  .refine(({ angle }) => angle !== 90 && angle !== 270, {
    error: "the top has the profile's own sizes, and the back the taper's",
    path: ["angle"],
  });

export const taperSchema = z
  .strictObject({
    width: width.describe("Width of the band at the back of the ring, mm, above 0; default that at the top."),
    thickness: thickness.describe("Thickness of the band at the back, mm, above 0; default that at the top."),
    between: z
      .array(placeSchema)
      .max(MOST_PLACES)
      .default([])
      .describe(
        `Sizes at other angles, at most ${MOST_PLACES}; given on one side of the ring alone, the other side is its mirror image; default none.`,
      ),
  })
  .refine(
    ({ between }) => new Set(between.map(({ angle }) => angle % 360)).size === between.length,
    "give each angle once",
  )
  .describe(
    "How the band narrows and thins from the top, where it has the profile's width and thickness, towards the back: smoothly, and never beyond the sizes given. The bore keeps its size; a pattern's tiles narrow with the band or keep their size (fit.taper). Default: the same all round.",
  );

export type TaperSpec = z.output<typeof taperSchema>;
