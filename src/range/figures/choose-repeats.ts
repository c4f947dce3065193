/**
 * The repeats by which a variant's tiles come nearest to the family's: larger fingers have more tiles, not larger ones.
 */
import type { Fit } from "../../band/fit/fit.js";
import { AnnuletError } from "../../base/errors.js";
import type { Design } from "../../design/schema.js";
import type { FitVariant } from "./fit-variant.js";

/** Least and most, both included. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** What a family's tiles are like. */
export interface WantedTile {
  /** Width, mm. */
  readonly tile: Span;
  /** Most stretch, without its sign. Default any. */
  readonly stretch?: number | undefined;
}

/**
 * The design with its repeats chosen, or as it is where they are not free: written as a number, or in lanes of their own.
 *
 * @param wanted widths of a tile, mm, and how far it may be stretched; numbers that keep to both come first
 * @throws AnnuletError as `fitDesign`
 */
export function chooseRepeats(design: Design, wanted: WantedTile, fitVariant: FitVariant): Design {
  const { pattern } = design;
  if (pattern === undefined || pattern.lanes !== undefined || pattern.fit.repeats !== "auto") return design;
  const { fit } = fitVariant(design);
  if (fit === undefined) return design;
  let best = { design, off: offBy(fit, wanted) };
  for (const repeats of numbersBetween(fit, middleOf(wanted.tile))) {
    const tried = withRepeats(design, pattern, repeats);
    const found = tryFit(tried, fitVariant);
    if (found !== undefined && offBy(found, wanted) < best.off) best = { design: tried, off: offBy(found, wanted) };
  }
  return best.design;
}

/** Numbers of repeats from those near the drawn band to those whose tiles should be as wide as is wanted, the latter first. */
function numbersBetween({ repeats, tileWidth }: Fit, wanted: number): readonly number[] {
  const middle = Math.round((repeats * tileWidth) / wanted);
  const [low, high] = [Math.min(repeats, middle) - BESIDE, Math.max(repeats, middle) + BESIDE];
  const all = Array.from({ length: Math.min(high - low + 1, MOST_REPEATS) }, (_, i) => low + i);
  return all
    .filter((number) => number >= 1 && number <= MOST_REPEATS)
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b)
    .slice(0, MOST_TRIED);
}

/** Numbers beyond either end that are tried too. */
const BESIDE = 2;

/** Numbers that are tried, some milliseconds each. Chosen. */
const MOST_TRIED = 24;

/** As many as a design may ask for. */
const MOST_REPEATS = 1000;

function middleOf({ from, to }: Span): number {
  return (from + to) / 2;
}

/** More than any two widths of tiles are apart. */
const OUTSIDE = 1e3;

/** How far tiles are from what is wanted, as a ratio's logarithm: twice as wide is as far off as half as wide. */
function offBy({ tileWidth, aspectError }: Fit, { tile, stretch = Number.POSITIVE_INFINITY }: WantedTile): number {
  const isOutside = tileWidth < tile.from || tileWidth > tile.to || Math.abs(aspectError) > stretch;
  return Math.abs(Math.log(tileWidth / middleOf(tile))) + (isOutside ? OUTSIDE : 0);
}

function withRepeats(design: Design, pattern: NonNullable<Design["pattern"]>, repeats: number): Design {
  return { ...design, pattern: { ...pattern, fit: { ...pattern.fit, repeats } } };
}

/** Some numbers do not go with a pattern's cycle, its medallion, or any band. */
function tryFit(design: Design, fitVariant: FitVariant): Fit | undefined {
  try {
    return fitVariant(design).fit;
  } catch (error) {
    if (error instanceof AnnuletError) return undefined;
    throw error;
  }
}
