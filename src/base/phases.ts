/**
 * The phases of a build, by which progress is told and time is noted.
 */

/**
 * The phases in order with their usual shares of the time: the mean over the examples at their own tolerances, rounded.
 * Decimation is off as a rule.
 */
export const PHASES = {
  document: 0.01,
  size: 0.005,
  fit: 0.02,
  profile: 0.01,
  pattern: 0.145,
  wrap: 0.03,
  solids: 0.19,
  union: 0.52,
  decimate: 0,
  checks: 0.01,
  measure: 0.03,
  output: 0.03,
} as const;

/** Name of a part of the work that is timed. */
export type Phase = keyof typeof PHASES;

/** Milliseconds of each phase. */
export type Timings = Readonly<Partial<Record<Phase, number>>>;
