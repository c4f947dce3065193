/** The catalogue of bores. A new one is a file here, and a line in each of the two lists. */
import { z } from "zod";
import type { BoreForm, BoreSketch, Frame } from "../form.js";
import { comfortBore, comfortBoreSchema } from "./comfort.js";
import { FLAT_BORE_DEFAULTS, flatBore, flatBoreSchema } from "./flat.js";

export const boreSchema = z
  .discriminatedUnion("form", [flatBoreSchema, comfortBoreSchema])
  .default({ form: "flat", ...FLAT_BORE_DEFAULTS })
  .describe("The inside of the band; default a flat bore.");

export type BoreSpec = z.output<typeof boreSchema>;

export const BORES: { readonly [Form in BoreSpec["form"]]: BoreForm<Extract<BoreSpec, { form: Form }>> } = {
  flat: flatBore,
  comfort: comfortBore,
};

/** Draws the bore that the spec names. */
export function sketchBore(spec: BoreSpec, frame: Frame): BoreSketch {
  const form: BoreForm<never> = BORES[spec.form];
  return form.sketch(spec as never, frame);
}
