/**
 * The bores annulet makes, and the check that a size is one of them.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";

/**
 * Smallest and largest diameter of a bore, mm. Fingers lie well inside (every size system's labels do); the rest is
 * room for dolls' rings, napkin rings and bangles for small wrists. Common practice, no source.
 */
export const BORE_DIAMETER = { min: 5, max: 60 } as const;

/** The same as circumferences, mm. */
export const BORE_CIRCUMFERENCE = { min: Math.PI * BORE_DIAMETER.min, max: Math.PI * BORE_DIAMETER.max } as const;

/** Rounding error that is let pass at the two ends, mm. */
const END_SLACK = 1e-9;

/**
 * Hands a length back if a bore may have it.
 *
 * @throws AnnuletError `size-out-of-range`, also for what is no number
 */
export function requireBore(
  length: number,
  range: { readonly min: number; readonly max: number },
  path: string,
): number {
  if (typeof length === "number" && length >= range.min - END_SLACK && length <= range.max + END_SLACK) return length;
  throw new AnnuletError({
    code: "size-out-of-range",
    message: "This is no ring's bore.",
    path,
    value: length,
    allowed: `a number from ${showLength(range.min)} to ${showLength(range.max)}`,
    hint: "Lengths are in mm: an inch is 25.4 mm. Check whether a diameter was meant or a circumference.",
  });
}
