/**
 * By how much a number moves at a press of an arrow key or a turn of the wheel.
 */
import { isWithin } from "./limits.js";
import type { NumberKind } from "./read-number.js";

/** One press, by unit. Chosen: what a bench can tell apart; of plain ratios a twentieth. */
const STEPS: Readonly<Record<string, number>> = { mm: 0.05, degrees: 1, "%": 0.1, grams: 0.1, "mm³": 1, "g/cm³": 0.1 };

const STEP_OF_RATIO = 0.05;

/** Where a range is narrow, a step is this part of it at most: 50 presses lead through. Chosen. */
const MOST_OF_RANGE = 1 / 50;

/** How far one press leads. */
export function stepOf({ whole, limits }: NumberKind, unit: string | undefined): number {
  if (whole) return 1;
  const step = STEPS[unit ?? ""] ?? STEP_OF_RATIO;
  const [low, high] = [limits.least ?? limits.above, limits.most ?? limits.below];
  if (low === undefined || high === undefined || high <= low) return step;
  return Math.min(step, 10 ** Math.floor(Math.log10((high - low) * MOST_OF_RANGE)));
}

/**
 * The number that so many steps lead to, on whole steps: from 0.93 up by 0.05 comes 0.95. It stops at the limits.
 *
 * @param count steps; below 0 they lead down
 */
export function stepped(value: number, count: number, kind: NumberKind, step: number): number {
  const at = value / step;
  const near = Math.round(at);
  const isOn = Math.abs(at - near) < 1e-6;
  const first = isOn ? near : count > 0 ? Math.floor(at) : Math.ceil(at);
  const next = tidy((first + count) * step);
  const { least, most } = kind.limits;
  const held = Math.min(most ?? Number.POSITIVE_INFINITY, Math.max(least ?? Number.NEGATIVE_INFINITY, next));
  return isWithin(held, kind.limits) ? held : value;
}

/** Without the last digits that steps of a tenth leave. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
