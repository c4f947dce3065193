/** The fit alone, as `annulet/fit`: without the readers of art and all that is worked in space. */

export type { Fit, FitCandidate, LaneFit } from "../band/fit/fit.js";
export { AnnuletError, type Warn, type Warning } from "../base/errors.js";
export type { Limits } from "../base/limits.js";
export type { DesignInput } from "../design/design-input.js";
export { type FitDesignOptions, fitDesign } from "../ring/fit-design.js";
