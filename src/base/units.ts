/**
 * Units and their exact factors. Inside annulet: millimetres, grams, radians. Documents give degrees.
 */

/** Millimetres in an inch; exact by the international yard and pound agreement of 1959. */
export const MM_PER_INCH = 25.4;

/** Cubic millimetres in a cubic centimetre, the volume that densities are given for. */
export const MM3_PER_CM3 = 1000;

/** One full turn in radians. */
export const TURN = 2 * Math.PI;

/** θ of the top of the ring, radians from +x. */
export const TOP = TURN / 4;

/** Degrees to radians. */
export function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}

/** Radians to degrees. */
export function degrees(radians: number): number {
  return (radians * 180) / Math.PI;
}

/** Shows a length in mm for a message: at most three decimals, no trailing zeros. */
export function showLength(mm: number): string {
  return `${Number(mm.toFixed(3))} mm`;
}
