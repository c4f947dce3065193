/**
 * What stands beside every published value.
 */

/** How sure a value is. */
export type Certainty =
  /** A standard, a law, or several sources that agree. */
  | "standard"
  | "one credible source"
  /** Weak or conflicting sources. */
  | "weak"
  /** By the mixing rule, from the densities of the pure metals. */
  | "computed"
  /** From memory, no source. */
  | "memory"
  /** The user's own figure. */
  | "own"
  /** Common practice, no source. */
  | "common practice";
