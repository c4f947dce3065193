/**
 * The `profile` part of a design document: the band's cross-section.
 */
import { z } from "zod";
import { boreSchema } from "./bore.js";
import { LARGEST_SIZE } from "./limits.js";
import { outsideSchema } from "./outside.js";
import { taperSchema } from "./taper.js";

export const profileSchema = z
  .strictObject({
    width: z
      .number()
      .positive()
      .max(LARGEST_SIZE)
      .describe(
        "Width of the band along the finger axis, mm, above 0 and at most 1000; where the band tapers, that at the top; no default.",
      ),
    thickness: z
      .number()
      .positive()
      .max(LARGEST_SIZE)
      .describe(
        "From the bore's narrowest circle to the outside's highest nominal point, mm, above 0 and at most 1000; no default.",
      ),
    bore: boreSchema,
    outside: outsideSchema,
    taper: taperSchema.optional(),
  })
  .describe("The band's cross-section.");

/** The profile part of a design, defaults filled in. */
export type ProfileSpec = z.output<typeof profileSchema>;
