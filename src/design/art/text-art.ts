/**
 * A region whose art is a text, set in its tile as an SVG file is: its fields.
 */
import { z } from "zod";
import { textFields } from "./text-fields.js";

export const textArtSchema = z
  .strictObject({
    ...textFields,
    height: z
      .number()
      .min(0.3)
      .max(20)
      .optional()
      .describe("height of capitals, mm, 0.3 to 20, instead of `fit` and `scale`; default what the place allows"),
  })
  .describe("a text; fill does not apply");

export type TextArt = z.output<typeof textArtSchema>;
