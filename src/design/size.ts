/**
 * The document's `size`: a label in a size system, or the bore in mm.
 */
import { z } from "zod";
import { BORE_CIRCUMFERENCE, BORE_DIAMETER } from "../size/bore-range.js";
import { sizeSystems } from "../size/catalogue.js";

const LABELS_IN_WORDS = sizeSystems.map((system) => `${system.name}: ${system.labels}`).join("; ");

const labelledSize = z
  .strictObject({
    system: z
      .enum(sizeSystems.map((system) => system.name))
      .describe(`${sizeSystems.map((system) => `${system.name}: ${system.title}`).join("; ")}.`),
    value: z.union([z.string(), z.number()]).describe(`Its label. ${LABELS_IN_WORDS}.`),
  })
  .describe("A label.");

const diameterSize = z
  .strictObject({
    diameter: z
      .number()
      .min(BORE_DIAMETER.min)
      .max(BORE_DIAMETER.max)
      .describe(`Inner diameter in mm, ${BORE_DIAMETER.min} to ${BORE_DIAMETER.max}.`),
  })
  .describe("An inner diameter.");

const circumferenceSize = z
  .strictObject({
    circumference: z
      .number()
      .min(BORE_CIRCUMFERENCE.min)
      .max(BORE_CIRCUMFERENCE.max)
      .describe("Inner circumference in mm."),
  })
  .describe("An inner circumference.");

/** The document's `size`. */
export const sizeSchema = z
  .union([labelledSize, diameterSize, circumferenceSize])
  .describe("A label, or inner diameter or circumference. " + "Of a comfort bore that of its narrowest circle.");
