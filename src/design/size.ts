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
      .describe(`Size system: ${sizeSystems.map((system) => `${system.name} (${system.title})`).join(", ")}.`),
    value: z.union([z.string(), z.number()]).describe(`Label in that system, text or number. ${LABELS_IN_WORDS}.`),
  })
  .describe("A size by its label in a size system.");

const diameterSize = z
  .strictObject({
    diameter: z
      .number()
      .min(BORE_DIAMETER.min)
      .max(BORE_DIAMETER.max)
      .describe(`Inner diameter in mm, ${BORE_DIAMETER.min} to ${BORE_DIAMETER.max}.`),
  })
  .describe("A size by its inner diameter.");

const circumferenceSize = z
  .strictObject({
    circumference: z
      .number()
      .min(BORE_CIRCUMFERENCE.min)
      .max(BORE_CIRCUMFERENCE.max)
      .describe(
        `Inner circumference in mm, ${BORE_CIRCUMFERENCE.min.toFixed(2)} to ${BORE_CIRCUMFERENCE.max.toFixed(2)} ` +
          `(a diameter of ${BORE_DIAMETER.min} to ${BORE_DIAMETER.max}).`,
      ),
  })
  .describe("A size by its inner circumference.");

/** The document's `size`. */
export const sizeSchema = z
  .union([labelledSize, diameterSize, circumferenceSize])
  .describe(
    "Finger size: a label in a size system, or inner diameter or circumference in mm. " +
      "A comfort bore has this size at its narrowest circle.",
  );
