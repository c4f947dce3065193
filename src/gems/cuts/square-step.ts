/**
 * The square step cut with sharp corners: two rows above the girdle, two below it, and a point.
 */
import type { Cut, StoneSize } from "../cut.js";
import { type Rectangle, rectangleCorners, sidesOf } from "../rectangle.js";
import { CROWN_ROWS, PAVILION_ROWS, stepCut } from "../step-cut.js";
import { STEP_DIAMOND } from "./emerald.js";

function outlineOf({ length, width }: StoneSize): Rectangle {
  return { length, width, corner: 0 };
}

export const squareStep: Cut = {
  name: "square-step",
  title: "Square step cut",
  ratio: { least: 1, usual: 1, most: 1 },
  proportions: { table: 0.62, crownHeight: 0.14, girdle: 0.03, pavilionDepth: 0.45, culet: 0 },
  proportionsSource: "common practice, no source; girdle as the round brilliant's",
  weight: {
    diamond: STEP_DIAMOND,
    coloured: {
      product: "area",
      factors: [[1, 0.0025]],
      source: "talk.jewelry thread 16956; dendritics.com has 0.0023",
      certainty: "weak",
    },
  },
  outline: (size) => ({ segments: sidesOf(rectangleCorners(outlineOf(size))), stretch: 1 }),
  facets: (size, proportions) =>
    stepCut(
      {
        width: size.width,
        inset: (by) => rectangleCorners(outlineOf(size), by),
        crown: CROWN_ROWS[2],
        pavilion: PAVILION_ROWS[2],
      },
      proportions,
    ),
};
