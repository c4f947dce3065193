/**
 * The fit of a variant's design. Variants that differ in nothing that a fit depends on, such as their alloy, share one.
 */
import type { Fit } from "../../band/fit/fit.js";
import { canonicalText } from "../../base/canonical.js";
import { AnnuletError } from "../../base/errors.js";
import { Work } from "../../base/work.js";
import type { Design } from "../../design/schema.js";
import * as fitting from "../../ring/steps/fit.js";

/** A fit with the bore that it is for. */
export interface FittedBand {
  readonly fit: Fit | undefined;
  /** mm */
  readonly boreRadius: number;
}

/** Fits that are remembered. Chosen: some megabytes. */
const REMEMBERED = 4096;

/** @throws AnnuletError as `fitDesign` */
export type FitVariant = (design: Design) => FittedBand;

export function rememberingFits(): FitVariant {
  const known = new Map<string, FittedBand>();
  return (design) => {
    const fitPattern = fitting.fitPattern({ design });
    const key = canonicalText([design.size, design.profile, design.tolerance, fitPattern]);
    const before = known.get(key);
    if (before !== undefined) return before;
    const boreRadius = fitting.size({ design }).diameter / 2;
    const fit = fitClose((reach) => {
      const asked = fitPattern && { ...fitPattern, reach };
      return fitting.fit({ design, boreRadius, fitPattern: asked }, { warn: () => {}, work: new Work() });
    });
    if (known.size >= REMEMBERED) known.clear();
    known.set(key, { fit, boreRadius });
    return { fit, boreRadius };
  };
}

/** Numbers of repeats that are tried on each side of the nearest, where that is enough. */
const CLOSE = 1;

/**
 * The fit by the numbers next to the nearest, a third of the work: of tiles that are held the bands of others are farther off. Where
 * one of those has no band, all are tried.
 */
function fitClose(fitWith: (reach?: number) => Fit | undefined): Fit | undefined {
  try {
    const fit = fitWith(CLOSE);
    if (fit?.candidates.every(({ bandWidth }) => bandWidth !== undefined) !== false) return fit;
  } catch (error) {
    if (!(error instanceof AnnuletError)) throw error;
  }
  return fitWith();
}
