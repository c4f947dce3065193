/**
 * Weights as they are printed: with no more digits than what is published of the density allows.
 */
import type { WeightTable } from "../../measure/weights/weight-table.js";

/** A hundredth of a gram: what a bench scale shows (common practice, no source), and no density here is surer. */
const MOST_DECIMALS = 2;

/**
 * A weight in g. The last digit printed counts at most what it may be more or less, and more than a
 * tenth of that.
 *
 * @param span largest less smallest published density over the density; 0 where none is published
 */
export function showGrams(grams: number, span: number): string {
  return grams.toFixed(gramDecimals((Math.abs(grams) * span) / 2));
}

/** Decimals that a weight is printed with. @param uncertain how much more or less it may be, g */
export function gramDecimals(uncertain: number): number {
  const allowed = uncertain > 0 ? Math.max(0, Math.ceil(-Math.log10(uncertain))) : MOST_DECIMALS;
  return Math.min(allowed, MOST_DECIMALS);
}

/** Span of a material's published densities over its density, by its row of the table; 0 where none is known. */
export function densitySpan({ rows, pattern }: WeightTable, symbol: string): number {
  const row = rows.find((one) => one.symbol === symbol);
  if (row !== undefined) return spanOf(row.finishedRange, row.finished);
  return symbol === pattern.symbol ? spanOf(pattern.weightRange, pattern.weight) : 0;
}

function spanOf(range: readonly [number, number] | null, weight: number): number {
  return range === null || weight === 0 ? 0 : (range[1] - range[0]) / weight;
}
