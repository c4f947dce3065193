/**
 * What a region looks like cut across, in one of its forms. A new form is a file beside this and its place in the list.
 */
import { z } from "zod";
import { domedSectionSchema } from "./domed.js";
import { flatSectionSchema } from "./flat.js";
import { hollowSectionSchema } from "./hollow.js";
import { ridgeSectionSchema } from "./ridge.js";

export const sectionSchema = z
  .discriminatedUnion("form", [flatSectionSchema, domedSectionSchema, ridgeSectionSchema, hollowSectionSchema])
  .describe("the region cut across, instead of height and round")
  .meta({ id: "section" });

export type SectionSpec = z.output<typeof sectionSchema>;
