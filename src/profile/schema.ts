/** The `profile` part of a design document. */
import { z } from "zod";
import { boreSchema } from "./bores/index.js";
import { outsideSchema } from "./outsides/index.js";

export const profileSchema = z
  .strictObject({
    width: z.number().positive().describe("Width of the band along the finger axis, mm, above 0."),
    thickness: z
      .number()
      .positive()
      .describe("From the bore's narrowest circle to the outside's highest nominal point, mm, above 0."),
    bore: boreSchema,
    outside: outsideSchema,
  })
  .describe("The band's cross-section.");

export type ProfileSpec = z.output<typeof profileSchema>;
