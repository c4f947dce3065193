/**
 * The bore of the cross-section, in one of its forms. A new form is a file in bores/ and its place in the list.
 */
import { z } from "zod";
import { comfortBoreSchema } from "./bores/comfort.js";
import { FLAT_BORE_DEFAULTS, flatBoreSchema } from "./bores/flat.js";

export const boreSchema = z
  .discriminatedUnion("form", [flatBoreSchema, comfortBoreSchema])
  .default({ form: "flat", ...FLAT_BORE_DEFAULTS })
  .describe("The inside; default a flat bore.");

export type BoreSpec = z.output<typeof boreSchema>;
