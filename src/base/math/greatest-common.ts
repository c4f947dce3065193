/**
 * The greatest common divisor, by Euclid's algorithm.
 */

/** @param a @param b whole numbers, 1 or more */
export function greatestCommon(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y > 0) [x, y] = [y, x % y];
  return x;
}
