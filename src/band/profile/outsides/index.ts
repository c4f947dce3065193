/** The catalogue of outsides. A new one is a file here, and a line in each of the two lists. */
import { z } from "zod";
import type { Frame, OutsideForm, OutsideSketch } from "../form.js";
import { bevelled, bevelledSchema } from "./bevelled.js";
import { channel, channelSchema } from "./channel.js";
import { concave, concaveSchema } from "./concave.js";
import { domed, domedSchema } from "./domed.js";
import { flatOutside, flatOutsideSchema } from "./flat.js";
import { free, freeSchema } from "./free.js";
import { knife, knifeSchema } from "./knife.js";

export const outsideSchema = z
  .discriminatedUnion("form", [
    flatOutsideSchema,
    domedSchema,
    channelSchema,
    bevelledSchema,
    concaveSchema,
    knifeSchema,
    freeSchema,
  ])
  .describe("The outside of the band.");

export type OutsideSpec = z.output<typeof outsideSchema>;

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
