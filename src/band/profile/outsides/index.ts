/** The catalogue of outsides. A new one is a file here, and a line in each of the two lists. */

import type { OutsideSpec } from "../../../design/profile/outside.js";
import type { Frame, Growth, OutsideForm, OutsideSketch } from "../form.js";
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

/** What finishing takes metal off on the outside that the spec names: all of it, seat included, or its rails alone. */
export function finishedOf(spec: OutsideSpec): OutsideForm<unknown>["finished"] {
  return OUTSIDES[spec.form].finished;
}

/** The outside that the spec names before it is finished. */
export function grownOutside(spec: OutsideSpec, by: Growth): OutsideSpec {
  const form: OutsideForm<OutsideSpec> = OUTSIDES[spec.form];
  return form.grown(spec, by);
}

/** Draws the outside that the spec names. */
export function sketchOutside(spec: OutsideSpec, frame: Frame): OutsideSketch {
  const form: OutsideForm<OutsideSpec> = OUTSIDES[spec.form];
  return form.sketch(spec, frame);
}
