/**
 * The smallest and the largest of many numbers.
 */

/** Smallest and largest: lists may be too long to spread into a call. Infinity and -Infinity of none. */
export function extent(values: readonly number[]): [low: number, high: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return [low, high];
}
