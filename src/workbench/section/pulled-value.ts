/**
 * What a size becomes when an arrow is pulled, or pressed along with a key.
 */
import type { Grip } from "./dimensions.js";

/** Sizes snap to these, mm: as makers say them, and as fine as a file cuts. Chosen. */
export const SIZE_STEPS = { coarse: 0.05, fine: 0.01 } as const;

/** Decimals that are kept: a tenth of a micrometre. */
const DECIMALS = 4;

export interface SizeRange {
  readonly least: number;
  readonly most: number;
}

/** A value on the nearest step within its range, mm. */
export function snapSize(value: number, step: number, { least, most }: SizeRange): number {
  const snapped = Math.round(value / step) * step;
  return Number(Math.min(most, Math.max(least, snapped)).toFixed(DECIMALS));
}

/** The size once its grip was pulled by (w, height), mm. */
export function pulledSize(value: number, { pull }: Grip, [dw, dh]: readonly [number, number]): number {
  return value + pull[0] * dw + pull[1] * dh;
}

/** Which way a key moves a size: 1, −1, or 0 for other keys; of a step that is `many` with PageUp and PageDown. */
export function stepsOfKey(key: string): number {
  const MANY = 10;
  return { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: MANY, PageDown: -MANY }[key] ?? 0;
}
