/**
 * The emerald cut: a step cut with cut corners, three rows above the girdle and three below it, and a keel.
 */
import type { Cut, StoneSize, WeightFormula } from "../cut.js";
import { type Rectangle, rectangleCorners, sidesOf } from "../rectangle.js";
import { CROWN_ROWS, PAVILION_ROWS, stepCut } from "../step-cut.js";
import { COLOURED_SOURCE, DIAMOND_SOURCE } from "../weight-sources.js";

/** What is cut off each corner, a share of the width: common practice, no source. */
const CORNER = 0.15;

/** Of emerald, princess and square cuts. */
export const STEP_DIAMOND: WeightFormula = {
  product: "area",
  factors: [
    [1, 0.008],
    [1.5, 0.0092],
    [2, 0.01],
    [2.5, 0.0106],
  ],
  source: DIAMOND_SOURCE,
  certainty: "standard",
};

function outlineOf({ length, width }: StoneSize): Rectangle {
  return { length, width, corner: CORNER * width };
}

export const emerald: Cut = {
  name: "emerald",
  title: "Emerald cut",
  // 7 × 5 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1, usual: 1.4, most: 3 },
  proportions: { table: 0.62, crownHeight: 0.14, girdle: 0.03, pavilionDepth: 0.45, culet: 0 },
  proportionsSource: "common practice, no source; girdle as the round brilliant's",
  weight: {
    diamond: STEP_DIAMOND,
    coloured: { product: "area", factors: [[1, 0.0025]], source: COLOURED_SOURCE, certainty: "standard" },
  },
  outline: (size) => ({ segments: sidesOf(rectangleCorners(outlineOf(size))), stretch: 1 }),
  facets: (size, proportions) =>
    stepCut(
      {
        width: size.width,
        inset: (by) => rectangleCorners(outlineOf(size), by),
        crown: CROWN_ROWS[3],
        pavilion: PAVILION_ROWS[3],
      },
      proportions,
    ),
};
