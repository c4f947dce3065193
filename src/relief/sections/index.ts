/** The catalogue of sections. A new one is a file here, and a line in each of the two lists. */

import type { SectionSpec } from "../../design/sections/section.js";
import { domedSection } from "./domed.js";
import { flatSection } from "./flat.js";
import { hollowSection } from "./hollow.js";
import { ridgeSection } from "./ridge.js";
import type { SectionForm, SectionFrame, SectionLine } from "./section-form.js";

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
