/**
 * One stone in all terms, from its size or its weight.
 */
import { AnnuletError, type Problem } from "../base/errors.js";
import { A_NUMBER, listOf, numberFrom, type OptionRule, type OptionRules, requireOptions } from "../base/options.js";
import { crownAngleOf, pavilionAngleOf } from "./angles.js";
import { findGem, gems } from "./catalogue.js";
import type { Cut, StoneSize } from "./cut.js";
import { findCut } from "./cuts/catalogue.js";
import { USUAL_NARROW } from "./cuts/tapered-baguette.js";
import type { Gem } from "./gem.js";
import { outlineArea, outlinePerimeter } from "./outline.js";
import { type ProportionsSpec, proportionsOf } from "./proportions.js";
import { type CutName, heightsOf, type Stone, type StoneHeights } from "./stone.js";
import { caratsOf, formulaFor, GRAMS_PER_CARAT, sizeOfCarats, type UsedFormula } from "./weight.js";

/** A stone as it is asked for: by its size or by its weight. */
export interface StoneInput {
  /** Default round. */
  readonly cut?: CutName | undefined;
  /** mm, 0.3 to 50: across a round or square stone, the length of a long one. This or `carats`. */
  readonly size?: number | undefined;
  /** Weight, carats, above 0, at most 1000: the size then follows from the formula. */
  readonly carats?: number | undefined;
  /** mm, of a long stone. Default its length by the cut's usual length : width. */
  readonly width?: number | undefined;
  /** mm, of a tapered baguette's narrow end. Default 0.7 of its width. */
  readonly narrow?: number | undefined;
  /** Symbol of the gem. Default diamond. */
  readonly gem?: string | undefined;
  /** Default the cut's usual ones. */
  readonly proportions?: ProportionsSpec | undefined;
}

/** What `stoneOf` may be told beside the stone. */
export interface StoneOptions {
  /** The gems to choose from; default the built-in ones. */
  readonly gems?: readonly Gem[];
}

/** A stone with all that follows from it. */
export interface StoneFacts extends Stone {
  /** mm. */
  readonly heights: StoneHeights;
  /** By the published formula. */
  readonly carats: number;
  readonly grams: number;
  readonly formula: UsedFormula;
  /** Degrees, across the width; of a cabochon undefined. */
  readonly angles: { readonly crown: number; readonly pavilion: number } | undefined;
  /** The girdle's outline: mm² and mm. */
  readonly outline: { readonly area: number; readonly perimeter: number };
}

/** Sizes of stones, mm, and weights, carats, that are read; chosen, wider than what is set. */
const SIZE = numberFrom(0.3, 50, "mm");
const MOST_CARATS = 1000;

/** What is told better, and with what is allowed of the cut, once its name is known. */
const LATER: OptionRule = { ...A_NUMBER, holds: () => true };

const FIELDS: OptionRules<StoneInput> = {
  cut: LATER,
  size: LATER,
  carats: LATER,
  width: LATER,
  narrow: LATER,
  gem: LATER,
  proportions: LATER,
};

const RULES: OptionRules<StoneOptions> = { gems: listOf(isGem, "gems, as `gems` has them") };

function isGem(value: unknown): boolean {
  const { symbol, density } = Object(value) as Partial<Gem>;
  return typeof symbol === "string" && typeof Object(density).value === "number";
}

/** Least share of a tapered stone's width at its narrow end; chosen. */
const LEAST_NARROW = 0.3;

/**
 * A stone with its heights, angles, outline and weight.
 *
 * @throws AnnuletError `cut-unknown`, `gem-unknown`, `stone-size` for sizes that are none or do not suit the cut,
 *   `proportions-invalid`, `proportions-cannot-close`
 *
 * @example
 * const stone = stoneOf({ cut: "round", carats: 0.5 });
 * console.log(stone.width, stone.heights.depth, stone.grams); // 5.12 mm across, 3.13 mm deep, 0.1 g
 */
export function stoneOf(input: StoneInput, options: StoneOptions = {}): StoneFacts {
  requireOptions(input, FIELDS);
  requireOptions(options, RULES);
  const { cut: name = "round", gem: symbol = "diamond", proportions: spec = "usual" } = input;
  const cut = findCut(name);
  const gem = findGem(symbol, options.gems ?? gems);
  const pattern = readSize(cut, input);
  const proportions = proportionsOf(cut, pattern, spec);
  const size = input.carats === undefined ? pattern : sizeOfCarats(input.carats, cut, gem, pattern, proportions);
  const outline = cut.outline(size);
  const carats = caratsOf(cut, gem, size, proportions);
  return {
    cut: cut.name,
    ...size,
    proportions,
    gem: gem.symbol,
    heights: heightsOf({ width: size.width, proportions }),
    carats,
    grams: carats * GRAMS_PER_CARAT,
    formula: formulaFor(cut, gem, size),
    angles:
      proportions.table === 0
        ? undefined
        : { crown: crownAngleOf(proportions), pavilion: pavilionAngleOf(proportions) },
    outline: { area: outlineArea(outline), perimeter: outlinePerimeter(outline) },
  };
}

/** The size asked for; where it is a weight, one of the right length : width. */
function readSize(cut: Cut, given: StoneInput): StoneSize {
  const problems = sizeProblems(cut, given);
  if (problems.length > 0) throw new AnnuletError(problems);
  const length = given.size ?? cut.ratio.usual;
  const width = given.width ?? length / cut.ratio.usual;
  if (cut.name !== "tapered-baguette") return { length, width };
  return { length, width, narrow: given.narrow ?? USUAL_NARROW * width };
}

function sizeProblems(cut: Cut, given: StoneInput): Problem[] {
  const { size, carats, width, narrow } = given;
  const problem = (path: string, message: string, allowed: string, value: unknown): Problem[] => [
    { code: "stone-size", message, path, value, allowed },
  ];
  if ((size === undefined) === (carats === undefined))
    return problem("size", "a stone is given by its size or by its weight", "either size or carats", size);
  if (carats !== undefined && (typeof carats !== "number" || !(carats > 0 && carats <= MOST_CARATS)))
    return problem("carats", "is no weight of a stone", `a number above 0, at most ${MOST_CARATS} carats`, carats);
  if (carats !== undefined && (width !== undefined || narrow !== undefined))
    return problem("width", "its width follows from its weight", "size and width, or carats alone", width ?? narrow);
  const wrong = (["size", "width"] as const).filter((name) => given[name] !== undefined && !SIZE.holds(given[name]));
  if (wrong.length > 0)
    return wrong.flatMap((name) => problem(name, "is no size of a stone", SIZE.allowed, given[name]));
  return [...ratioProblems(cut, given), ...narrowProblems(cut, given)];
}

function ratioProblems(cut: Cut, { size, width }: StoneInput): Problem[] {
  if (size === undefined || width === undefined) return [];
  const { least, most } = cut.ratio;
  // What is typed has few decimals, so that a square's sides are equal to the last bit or meant to differ.
  if (size / width >= least && size / width <= most) return [];
  const allowed =
    least === most ? `${size} mm, as long as wide` : `${(size / most).toFixed(2)} to ${(size / least).toFixed(2)} mm`;
  const message = `the cut ${cut.name} has another width at this length`;
  return [{ code: "stone-size", message, path: "width", value: width, allowed }];
}

function narrowProblems(
  cut: Cut,
  { size = cut.ratio.usual, width = size / cut.ratio.usual, narrow }: StoneInput,
): Problem[] {
  if (narrow === undefined) return [];
  if (cut.name !== "tapered-baguette") {
    const message = "only a tapered baguette has a narrow end";
    return [{ code: "stone-size", message, path: "narrow", value: narrow, allowed: "nothing" }];
  }
  const least = LEAST_NARROW * width;
  if (typeof narrow === "number" && narrow >= least && narrow <= width) return [];
  const allowed = `a number from ${least.toFixed(2)} to ${width.toFixed(2)} mm`;
  const message = "is no narrow end of a tapered baguette";
  return [{ code: "stone-size", message, path: "narrow", value: narrow, allowed }];
}
