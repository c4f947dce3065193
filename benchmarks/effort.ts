/**
 * How long each task is timed. Quick runs show that everything works and roughly where the time goes.
 */
export interface Effort {
  /** Least time each task is repeated for, ms. */
  readonly time: number;
  /** Least number of timed calls. */
  readonly calls: number;
  /** The same for slow tasks. */
  readonly slowCalls: number;
}

/** A task whose first call takes longer is slow, ms. */
export const SLOW = 1000;

export const FULL: Effort = { time: 150, calls: 7, slowCalls: 3 };
export const QUICK: Effort = { time: 100, calls: 1, slowCalls: 1 };

/** The median of fewer calls says little on a machine that others use. */
const FEW = 3;

/** At least a few calls of each task. */
export function atLeastFew(effort: Effort): Effort {
  return { ...effort, calls: Math.max(effort.calls, FEW), slowCalls: Math.max(effort.slowCalls, FEW) };
}
