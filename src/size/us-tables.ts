/**
 * The two US tables of diameters, by formula and by the trade gauge: each is the other's second chart.
 */
import { MM_PER_INCH } from "../base/units.js";
import type { ChartEntry } from "./interpolation.js";

/** Diameter of size 0, mm: 0.458 in (en.wikipedia.org, Ring size; its chart agrees). */
export const ZERO_DIAMETER = 0.458 * MM_PER_INCH;

/** Growth of the diameter with a whole size, mm: 0.032 in (same source). */
export const SIZE_STEP = 0.032 * MM_PER_INCH;

/** Diameter of sizes 0, 1, 2 … 13, inches (gemsociety.org, Ring Size Comparison Chart). */
const GAUGE_DIAMETERS = [
  0.454, 0.487, 0.52, 0.553, 0.585, 0.618, 0.65, 0.683, 0.716, 0.748, 0.781, 0.814, 0.846, 0.879,
] as const;

/** Size and circumference in mm, by the gauge. */
export const GAUGE: readonly ChartEntry[] = GAUGE_DIAMETERS.map((inches, size) => [
  size,
  Math.PI * inches * MM_PER_INCH,
]);

/** Circumference of a size by formula, mm. */
export function formulaCircumference(size: number): number {
  return Math.PI * (ZERO_DIAMETER + SIZE_STEP * size);
}
