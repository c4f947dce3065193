/**
 * The oval brilliant: a round one stretched along its length. So the main facets across the width have the round one's angles,
 * those at the ends lower ones.
 */
import { brilliant } from "../brilliant.js";
import type { Cut } from "../cut.js";
import { DIAMOND_SOURCE } from "../weight-sources.js";
import { circleGirdle } from "./round.js";
import { BRILLIANT_USUAL, BRILLIANT_USUAL_SOURCE } from "./usual.js";

export const oval: Cut = {
  name: "oval",
  title: "Oval",
  // 7 × 5 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1, usual: 1.4, most: 3 },
  proportions: BRILLIANT_USUAL,
  proportionsSource: `${BRILLIANT_USUAL_SOURCE}, as the round brilliant's across the width`,
  weight: {
    diamond: { product: "mean²", factors: [[1, 0.0062]], source: DIAMOND_SOURCE, certainty: "standard" },
    coloured: {
      product: "mean²",
      factors: [[1, 0.002]],
      source: "talk.jewelry thread 16956; gempulse.com (dendritics.com takes length × width)",
      certainty: "standard",
    },
  },
  outline: ({ length, width }) => ({ segments: circleGirdle(width, 1).arcs, stretch: length / width }),
  facets: ({ length, width }, proportions, tolerance) =>
    brilliant(circleGirdle(width, length / width), proportions, tolerance),
};
