/**
 * The `profile` part of a design document: the band's cross-section.
 */
import { z } from "zod";
import { boreSchema } from "./bore.js";
import { LARGEST_SIZE } from "./limits.js";
import { outsideSchema } from "./outside.js";
import { stepSchema } from "./step.js";
import { taperSchema } from "./taper.js";

export const profileSchema = z
  .strictObject({
    width: z
      .number()
      .positive()
      .max(LARGEST_SIZE)
      .describe(
        "Width along the finger axis, mm, above 0 and at most 1000; of a band that tapers, at the top; no default.",
      ),
    thickness: z
      .number()
      .positive()
      .max(LARGEST_SIZE)
      .describe("From the bore's narrowest circle to the highest point, mm, above 0 and at most 1000; no default."),
    bore: boreSchema,
    outside: outsideSchema,
    step: stepSchema.optional(),
    taper: taperSchema.optional(),
  })
  .describe("The cross-section.");

/** The profile part of a design, defaults filled in. */
export type ProfileSpec = z.output<typeof profileSchema>;
