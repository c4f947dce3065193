/**
 * Castability of a design: built, measured, and judged by a rule set.
 */
import type { RuleSet } from "../design/rules/rule-set.js";
import type { BuildOptions } from "./build.js";
import { type DesignCheck, openRing } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";

/** How a design is judged. */
export interface CheckDesignOptions extends Omit<BuildOptions, "piece" | "geometry" | "print"> {
  /** The rule set: one of the built-in ones by name, or any value of its shape. Default what the design says. */
  readonly rules?: string | RuleSet | undefined;
}

/**
 * Judges the finished piece of a design. Limits of the design's own stand above those of a named set.
 *
 * @param document the design document: an object, or JSON text
 * @throws as `build`; AnnuletError `rules-unknown`
 *
 * @example
 * const { findings } = await checkDesign(document, { rules: "conservative", detail: "draft" });
 * for (const { rule, figure, limit } of findings) console.log(rule, figure, limit); // mm
 */
export async function checkDesign(document: unknown, options: CheckDesignOptions = {}): Promise<DesignCheck> {
  const { files, kernel, wasm, maxBeads, decimate, limits, ...asking } = readQuestion("check", options);
  const check = await openRing(document, { files, kernel, wasm, maxBeads, decimate, limits }).check(asking);
  asking.onProgress?.({ stage: "done", share: 1 });
  return check;
}
