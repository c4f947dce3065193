/**
 * The length of an ellipse by the arithmetic-geometric mean: M. Abramowitz and I. A. Stegun, Handbook of Mathematical
 * Functions (1964), 17.6: with a₀ and b₀ the half axes, aₙ and bₙ their means, cₙ² = aₙ² − bₙ²,
 * it is 2π (a₀² − Σ 2ⁿ⁻¹ cₙ²) / lim aₙ.
 */

/** Each step doubles the digits that are right: seven are enough for double precision down to b = a / 1e12. */
const STEPS = 12;

/**
 * The perimeter of an ellipse.
 *
 * @param a half of one axis, above 0
 * @param b half of the other, above 0, in the same unit
 */
export function ellipsePerimeter(a: number, b: number): number {
  let [mean, geometric] = [Math.max(a, b), Math.min(a, b)];
  let rest = mean * mean - ((mean - geometric) * (mean + geometric)) / 2;
  for (let n = 1; n <= STEPS; n++) {
    const difference = (mean - geometric) / 2;
    [mean, geometric] = [(mean + geometric) / 2, Math.sqrt(mean * geometric)];
    rest -= 2 ** (n - 1) * difference * difference;
  }
  return (2 * Math.PI * rest) / mean;
}
