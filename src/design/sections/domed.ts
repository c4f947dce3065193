/**
 * A pillow: its fields.
 */
import { z } from "zod";
import { draftField, edgeRadiusField, heightField, reachField, wallField } from "./fields.js";

export const domedSectionSchema = z
  .strictObject({
    form: z.literal("domed"),
    height: heightField.describe("height where the dome ends, mm, above 0"),
    wall: wallField,
    radius: edgeRadiusField,
    reach: reachField,
    draft: draftField,
  })
  .describe("A pillow that rises from the outline.");

export type DomedSection = z.output<typeof domedSectionSchema>;
