/**
 * The round brilliant.
 */
import type { Arc } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { type BrilliantGirdle, brilliant } from "../brilliant.js";
import type { Cut } from "../cut.js";
import { COLOURED_SOURCE, DIAMOND_SOURCE } from "../weight-sources.js";
import { BRILLIANT_USUAL, BRILLIANT_USUAL_SOURCE } from "./usual.js";

/** Main facets round a brilliant. */
const MAINS = 8;

/** A circle about the origin, an arc from each main facet to the next. The first stands at +x. */
export function circleGirdle(width: number, stretch: number): BrilliantGirdle {
  const step = (2 * Math.PI) / MAINS;
  const angles = Array.from({ length: MAINS }, (_, i) => i * step);
  return {
    width,
    arcs: angles.map((start): Arc => ({ kind: "arc", centre: [0, 0], radius: width / 2, start, sweep: step })),
    tangents: angles.map((angle): Point2 => [-Math.sin(angle), Math.cos(angle)]),
    centre: [0, 0],
    stretch,
  };
}

export const round: Cut = {
  name: "round",
  title: "Round brilliant",
  ratio: { least: 1, usual: 1, most: 1 },
  proportions: BRILLIANT_USUAL,
  proportionsSource: BRILLIANT_USUAL_SOURCE,
  weight: {
    diamond: { product: "mean²", factors: [[1, 0.0061]], source: DIAMOND_SOURCE, certainty: "standard" },
    coloured: { product: "mean²", factors: [[1, 0.0018]], source: COLOURED_SOURCE, certainty: "standard" },
  },
  outline: ({ width }) => ({ segments: circleGirdle(width, 1).arcs, stretch: 1 }),
  facets: ({ width }, proportions, tolerance) => brilliant(circleGirdle(width, 1), proportions, tolerance),
};
