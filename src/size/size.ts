/**
 * The size of a ring in a document, and the bore it means: D = C / π.
 */
import { z } from "zod";
import { AnnuletError } from "../base/errors.js";
import { BORE_CIRCUMFERENCE, BORE_DIAMETER, requireBore } from "./bore-range.js";
import { findSizeSystem, type SizeSystemOptions, sizeSystems } from "./catalogue.js";

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
    "Finger size: a label in a size system, or the inner diameter or circumference in mm. " +
      "A comfort bore has this size at its narrowest circle.",
  );

export type SizeSpec = z.infer<typeof sizeSchema>;

/** The bore that a size means. */
export interface ResolvedSize {
  /** Inner circumference, mm. */
  readonly circumference: number;
  /** Inner diameter, mm. */
  readonly diameter: number;
  /** Name of the size system, where the size was a label. */
  readonly system?: string;
  /** The label as the system writes it; as it was given where it lies between the system's steps. */
  readonly label?: string;
}

/** Circumferences closer than this are the same label, mm. */
const SAME_LABEL = 1e-6;

/**
 * The bore that a size means.
 *
 * @throws AnnuletError `size-unknown`, `size-system-unknown`, `size-out-of-range`, or `size-unclear` where it is not
 * given in exactly one of the three ways
 */
export function resolveSize(size: SizeSpec, options: SizeSystemOptions = {}): ResolvedSize {
  requireOneWay(size);
  if ("diameter" in size) {
    const diameter = requireBore(size.diameter, BORE_DIAMETER, "size.diameter");
    return { circumference: Math.PI * diameter, diameter };
  }
  if ("circumference" in size) {
    const circumference = requireBore(size.circumference, BORE_CIRCUMFERENCE, "size.circumference");
    return { circumference, diameter: circumference / Math.PI };
  }
  const system = findSizeSystem(size.system, options);
  const circumference = requireBore(system.circumferenceOf(size.value), BORE_CIRCUMFERENCE, "size.value");
  const nearest = system.labelOf(circumference);
  const onStep = nearest !== undefined && Math.abs(system.circumferenceOf(nearest) - circumference) < SAME_LABEL;
  return {
    circumference,
    diameter: circumference / Math.PI,
    system: system.name,
    label: onStep ? nearest : String(size.value).trim(),
  };
}

function requireOneWay(size: SizeSpec): void {
  const ways = ["system", "diameter", "circumference"].filter((way) => way in size);
  if (ways.length === 1) return;
  throw new AnnuletError({
    code: "size-unclear",
    message: ways.length === 0 ? "The size is not given." : `The size is given in ${ways.length} ways.`,
    path: "size",
    value: size,
    allowed: "one of {system, value}, {diameter}, {circumference}",
    hint: 'Write one of them, for example {"system": "iso", "value": 54}.',
  });
}
