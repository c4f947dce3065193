/**
 * The fit alone, without building the ring: what makers choose the number of repeats from. It calls the stages of the fit by
 * itself, at once: through the opened ring it would take the readers of all art with it into every page that only fits.
 */
import type { Fit } from "../band/fit/fit.js";
import { AnnuletError, type Warn, type Warning } from "../base/errors.js";
import { fillLimits, type Limits } from "../base/limits.js";
import { Work } from "../base/work.js";
import { readDesign } from "../design/read.js";
import { readOptions } from "../design/read-options.js";
import type { Design } from "../design/schema.js";
import { fitOptions } from "./options/fit-fields.js";
import * as fitting from "./steps/fit.js";

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
  const { warn, limits } = readOptions(fitOptions, options);
  const warnings: Warning[] = [];
  const found = fitNow(readDesign(document), new Work(fillLimits(limits)), warnings);
  if (warn !== undefined) for (const warning of warnings) warn(warning);
  if (found !== undefined) return found;
  throw new AnnuletError({
    code: "no-pattern",
    message: "the design has no pattern, so there is nothing to fit",
    path: "pattern",
    hint: 'add "pattern": {} for square tiles',
  });
}

/** The stages up to the fit. */
function fitNow(design: Design, work: Work, warnings: Warning[]): Fit | undefined {
  const warn: Warn = (warning) => {
    warnings.push(warning);
  };
  try {
    const boreRadius = fitting.size({ design }).diameter / 2;
    const fitPattern = fitting.fitPattern({ design });
    return fitting.fit({ design, boreRadius, fitPattern }, { warn, work });
  } catch (error) {
    if (!(error instanceof AnnuletError) || warnings.length === 0) throw error;
    throw new AnnuletError(error.problems, { cause: error, warnings });
  }
}
