/**
 * The size of a ring in a document, and the bore it means: D = C / π.
 */
import { AnnuletError } from "../base/errors.js";
import { BORE_CIRCUMFERENCE, BORE_DIAMETER, requireBore } from "./bore-range.js";
import { findSizeSystem, type SizeSystemOptions, systemsOf } from "./catalogue.js";
import type { SizeSystemName } from "./system-names.js";

/** A size as a document gives it: a label in a size system, or the inner diameter or circumference, mm. */
export type SizeSpec =
  | { readonly system: SizeSystemName | (string & {}); readonly value: string | number }
  | { readonly diameter: number }
  | { readonly circumference: number };

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
  /** Smallest and largest circumference that published charts have for the label, mm; only where they disagree. */
  readonly span?: readonly [number, number];
}

/** Circumferences closer than this are the same label, mm. */
const SAME_LABEL = 1e-6;

/**
 * The bore that a size means.
 *
 * @throws AnnuletError `size-unknown`, `size-system-unknown`, `size-out-of-range`, `option-unknown`, `option-invalid`, or
 * `size-unclear` where it is not given in exactly one of the three ways
 *
 * @example
 * resolveSize({ system: "uk", value: "N" }).circumference; // 53.75 mm
 */
export function resolveSize(size: SizeSpec, options: SizeSystemOptions = {}): ResolvedSize {
  systemsOf(options);
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
  const span = system.spanOf?.(size.value);
  return {
    circumference,
    diameter: circumference / Math.PI,
    system: system.name,
    label: onStep ? nearest : String(size.value).trim(),
    ...(span === undefined ? {} : { span }),
  };
}

function requireOneWay(size: SizeSpec): void {
  const given = Object(size) as object;
  const ways = ["system", "diameter", "circumference"].filter((way) => way in given);
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
