/** The catalogue of bores. A new one is a file here, and a line in each of the two lists. */

import type { BoreSpec } from "../../../design/profile/bore.js";
import type { BoreForm, BoreSketch, Frame, Growth } from "../form.js";
import { comfortBore } from "./comfort.js";
import { flatBore } from "./flat.js";

export const BORES: { readonly [Form in BoreSpec["form"]]: BoreForm<Extract<BoreSpec, { form: Form }>> } = {
  flat: flatBore,
  comfort: comfortBore,
};

/** The bore that the spec names before it is finished. */
export function grownBore(spec: BoreSpec, by: Growth): BoreSpec {
  const form: BoreForm<BoreSpec> = BORES[spec.form];
  return form.grown(spec, by);
}

/** Draws the bore that the spec names. */
export function sketchBore(spec: BoreSpec, frame: Frame): BoreSketch {
  const form: BoreForm<BoreSpec> = BORES[spec.form];
  return form.sketch(spec, frame);
}
