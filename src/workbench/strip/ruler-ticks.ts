/**
 * Where a ruler along the band has its marks: millimetres and degrees, as many as can be read.
 */

/** Steps of a ruler: 1, 2 and 5 times powers of ten; of degrees, parts of the round. */
const MILLIMETRES = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];
const DEGREES = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 45, 90];

/** Least room from mark to mark, CSS pixels: a number and some air. Chosen. */
const ROOM = 44;

export interface Ruler {
  readonly step: number;
  /** Multiples of the step. */
  readonly marks: readonly number[];
}

/** Marks from one value to another. @param pixels in one unit */
export function rulerMarks(from: number, to: number, pixels: number, unit: "mm" | "degrees"): Ruler {
  const steps = unit === "mm" ? MILLIMETRES : DEGREES;
  const step = steps.find((one) => one * pixels >= ROOM) ?? steps[steps.length - 1];
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.max(0, Math.floor(to / step + 1e-9) - first + 1);
  const MOST = 200;
  return { step, marks: Array.from({ length: Math.min(MOST, count) }, (_, i) => (first + i) * step) };
}

/** Decimals that a step needs. */
export function decimalsOf(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
}
