/**
 * The baguette: a small step cut with sharp corners, one row above the girdle, two below it, and a keel.
 */
import type { Cut, StoneSize, WeightFormula } from "../cut.js";
import { type Rectangle, rectangleCorners, sidesOf } from "../rectangle.js";
import { CROWN_ROWS, PAVILION_ROWS, stepCut } from "../step-cut.js";
import type { Proportions } from "../stone.js";
import { COLOURED_SOURCE, DIAMOND_SOURCE } from "../weight-sources.js";

export const BAGUETTE_USUAL: Proportions = {
  table: 0.66,
  crownHeight: 0.13,
  girdle: 0.03,
  pavilionDepth: 0.44,
  culet: 0,
};

export const BAGUETTE_SOURCE = "common practice, no source; girdle as the round brilliant's";

/** Of a tapered one the width is the mean of the two parallel edges. */
export const BAGUETTE_WEIGHT: { readonly diamond: WeightFormula; readonly coloured: WeightFormula } = {
  diamond: { product: "area", factors: [[1, 0.00915]], source: DIAMOND_SOURCE, certainty: "standard" },
  coloured: {
    product: "area",
    factors: [[1, 0.0026]],
    source: `${COLOURED_SOURCE}: rectangle, 0.0025 to 0.0026`,
    certainty: "standard",
  },
};

function outlineOf({ length, width }: StoneSize): Rectangle {
  return { length, width, corner: 0 };
}

export const baguette: Cut = {
  name: "baguette",
  title: "Baguette",
  // 4 × 2 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1.2, usual: 2, most: 5 },
  proportions: BAGUETTE_USUAL,
  proportionsSource: BAGUETTE_SOURCE,
  weight: BAGUETTE_WEIGHT,
  outline: (size) => ({ segments: sidesOf(rectangleCorners(outlineOf(size))), stretch: 1 }),
  facets: (size, proportions) =>
    stepCut(
      {
        width: size.width,
        inset: (by) => rectangleCorners(outlineOf(size), by),
        crown: CROWN_ROWS[1],
        pavilion: PAVILION_ROWS[2],
      },
      proportions,
    ),
};
