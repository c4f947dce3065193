/**
 * The fit alone, without building the ring: what makers choose the number of repeats from.
 */
import type { Fit } from "../band/fit/fit.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import type { Limits } from "../base/limits.js";
import { openInside } from "./open-ring.js";
import { readQuestion } from "./options/questions.js";

/** Who hears of warnings. */
export interface FitDesignOptions {
  /** Takes the warnings of the fit. Default: they are dropped. */
  readonly warn?: Warn | undefined;
  /** What the fit may cost; of a fit only its seconds count, beyond which AnnuletError `too-long`. Default 1 800 s. */
  readonly limits?: Partial<Limits> | undefined;
}

/**
 * Solves a design's fit. Files that the design names are not asked for: the fit does not depend on what is in them, so a
 * design whose files are missing or broken has a fit all the same.
 *
 * @throws AnnuletError as `readDesign`; `no-pattern` where there is nothing to fit; `fit-impossible`
 *
 * @example
 * const { candidates } = fitDesign(document);
 * for (const { repeats, bandWidth, tileWidth } of candidates) console.log(repeats, bandWidth, tileWidth); // mm
 */
export function fitDesign(document: unknown, options: FitDesignOptions = {}): Fit {
  const { warn, limits } = readQuestion("fit", options);
  const { answers, warnings } = openInside(document, { limits }).fitNow();
  if (warn !== undefined) for (const warning of warnings) warn(warning);
  if (answers.fit !== undefined) return answers.fit;
  throw new AnnuletError({
    code: "no-pattern",
    message: "the design has no pattern, so there is nothing to fit",
    path: "pattern",
    hint: 'add "pattern": {} for square tiles',
  });
}
