/**
 * Carats by the published formulas: factor × (mean diameter² or length × width) × depth, in mm. For diamonds the factor is a
 * number; for all other gems it is taken times the density in g/cm³. The formulas hold for girdles of thin to medium height:
 * they add 2 to 4 % for a thick one (a1-diamond.com) and up to 10 % for a bulge (3dbook.octonus.com), which is left to the
 * reader. Both ways are one formula, so a size found from carats weighs them to the last digits.
 */
import type { Cut, StoneSize, WeightFormula } from "./cut.js";
import type { Gem } from "./gem.js";
import { heightsOf, type Proportions } from "./stone.js";

/** Grams in a carat: by the metric carat of 1907. */
export const GRAMS_PER_CARAT = 0.2;

/** A formula as it is used for one stone. */
export interface UsedFormula {
  readonly product: WeightFormula["product"];
  /** For the stone's length : width, density included. */
  readonly factor: number;
  readonly source: string;
  readonly certainty: WeightFormula["certainty"];
}

/** The formula for a stone of a gem. */
export function formulaFor(cut: Cut, gem: Gem, size: StoneSize): UsedFormula {
  const isDiamond = gem.symbol === "diamond" && cut.weight.diamond !== undefined;
  const formula = isDiamond ? (cut.weight.diamond ?? cut.weight.coloured) : cut.weight.coloured;
  const factor = factorAt(formula, size.length / meanWidth(size)) * (isDiamond ? 1 : gem.density.value);
  return { product: formula.product, factor, source: formula.source, certainty: formula.certainty };
}

/** The factor for length : width: between two published ones interpolated, beyond them the nearest. */
export function factorAt({ factors }: WeightFormula, ratio: number): number {
  const after = factors.findIndex(([known]) => known >= ratio);
  if (after === 0) return factors[0][1];
  if (after < 0) return factors[factors.length - 1][1];
  const [[low, below], [high, above]] = [factors[after - 1], factors[after]];
  return below + ((above - below) * (ratio - low)) / (high - low);
}

/** Weight of a stone, carats. */
export function caratsOf(cut: Cut, gem: Gem, size: StoneSize, proportions: Proportions): number {
  const { product, factor } = formulaFor(cut, gem, size);
  const width = meanWidth(size);
  const across = product === "area" ? size.length * width : ((size.length + width) / 2) ** 2;
  return factor * across * heightsOf({ width: size.width, proportions }).depth;
}

/**
 * The size of a stone that weighs so much, as large in every direction as a pattern of it: the formulas grow with the cube.
 *
 * @param carats above 0
 * @param pattern a stone of the right length : width, of any size, mm
 */
export function sizeOfCarats(
  carats: number,
  cut: Cut,
  gem: Gem,
  pattern: StoneSize,
  proportions: Proportions,
): StoneSize {
  const times = Math.cbrt(carats / caratsOf(cut, gem, pattern, proportions));
  const { length, width, narrow } = pattern;
  const size = { length: length * times, width: width * times };
  return narrow === undefined ? size : { ...size, narrow: narrow * times };
}

/** Of a tapered stone the mean of its two parallel edges. */
function meanWidth({ width, narrow = width }: StoneSize): number {
  return (width + narrow) / 2;
}
