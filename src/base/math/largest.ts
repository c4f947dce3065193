/**
 * The largest value for which something still holds, by bisection.
 */

/** Most halvings: 50 narrow any interval to a 1e-15th of itself, the limit of double precision. */
const HALVINGS = 50;

/**
 * The largest value in [low, high] for which `holds` is true, taking it to hold up to some value and not beyond.
 * Returns `low` where it holds nowhere above it.
 *
 * @param within how near to the true value is near enough; default 0, as near as numbers go
 */
export function largestWhere(low: number, high: number, holds: (value: number) => boolean, within = 0): number {
  if (holds(high)) return high;
  let [good, bad] = [low, high];
  for (let i = 0; i < HALVINGS && bad - good > within; i++) {
    const middle = (good + bad) / 2;
    if (holds(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
