/** The catalogue of sections. A new one is a file here, and a line in each of the two lists. */
import { z } from "zod";
import { domedSection, domedSectionSchema } from "./domed.js";
import { flatSection, flatSectionSchema } from "./flat.js";
import { hollowSection, hollowSectionSchema } from "./hollow.js";
import { ridgeSection, ridgeSectionSchema } from "./ridge.js";
import type { SectionForm, SectionFrame, SectionLine } from "./section-form.js";

export const sectionSchema = z
  .discriminatedUnion("form", [flatSectionSchema, domedSectionSchema, ridgeSectionSchema, hollowSectionSchema])
  .describe("what the region looks like cut across: flat, domed, ridge or hollow; instead of height and round");

export type SectionSpec = z.output<typeof sectionSchema>;

export const SECTIONS: { readonly [Form in SectionSpec["form"]]: SectionForm<Extract<SectionSpec, { form: Form }>> } = {
  flat: flatSection,
  domed: domedSection,
  ridge: ridgeSection,
  hollow: hollowSection,
};

/** Draws the line of the section that the spec names. */
export function drawSection(spec: SectionSpec, frame: SectionFrame): SectionLine {
  const form: SectionForm<never> = SECTIONS[spec.form];
  return form.draw(spec as never, frame);
}
