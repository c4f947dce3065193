/** The catalogue of outsides. A new one is a file here, and a line in each of the two lists. */

import type { OutsideSpec } from "../../../design/profile/outside.js";
import type { Frame, OutsideForm, OutsideSketch } from "../form.js";
import { bevelled } from "./bevelled.js";
import { channel } from "./channel.js";
import { concave } from "./concave.js";
import { domed } from "./domed.js";
import { flatOutside } from "./flat.js";
import { free } from "./free.js";
import { knife } from "./knife.js";

export const OUTSIDES: { readonly [Form in OutsideSpec["form"]]: OutsideForm<Extract<OutsideSpec, { form: Form }>> } = {
  flat: flatOutside,
  domed,
  channel,
  bevelled,
  concave,
  knife,
  free,
};

/** Draws the outside that the spec names. */
export function sketchOutside(spec: OutsideSpec, frame: Frame): OutsideSketch {
  const form: OutsideForm<never> = OUTSIDES[spec.form];
  return form.sketch(spec as never, frame);
}
