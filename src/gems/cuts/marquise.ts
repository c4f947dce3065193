/**
 * The marquise brilliant: two arcs that meet in points.
 */
import type { Arc } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { type BrilliantGirdle, brilliant } from "../brilliant.js";
import type { Cut } from "../cut.js";
import { DIAMOND_SOURCE } from "../weight-sources.js";
import { BRILLIANT_USUAL, BRILLIANT_USUAL_SOURCE } from "./usual.js";

/** Arcs from main facet to main facet along each side. */
const ARCS = 4;

/** One arc of a pointed outline over half of its length: it leaves the widest place level and ends in the point. */
export interface PointedArc {
  readonly radius: number;
  /** Radians from the widest place to the point. */
  readonly sweep: number;
}

/** By the circle through the point that is level at the widest place: r = (b² + w² / 4) / w for a way b to the point. */
export function pointedArc(reach: number, width: number): PointedArc {
  const radius = (reach * reach + (width * width) / 4) / width;
  return { radius, sweep: Math.atan2(reach, radius - width / 2) };
}

/** From the point at +x round; the main facets stand at the points, at the widest places and midway along the arcs. */
function marquiseGirdle(length: number, width: number): BrilliantGirdle {
  const { radius, sweep } = pointedArc(length / 2, width);
  const step = (2 * sweep) / ARCS;
  const side = (centre: Point2, from: number) =>
    Array.from({ length: ARCS }, (_, i): Arc => ({ kind: "arc", centre, radius, start: from + i * step, sweep: step }));
  const upper = side([0, width / 2 - radius], Math.PI / 2 - sweep);
  const lower = side([0, radius - width / 2], (3 * Math.PI) / 2 - sweep);
  const along = ({ start }: Arc): Point2 => [-Math.sin(start), Math.cos(start)];
  const tangents = [[0, 1] as const, ...upper.slice(1).map(along), [0, -1] as const, ...lower.slice(1).map(along)];
  return { width, arcs: [...upper, ...lower], tangents, centre: [0, 0], stretch: 1 };
}

export const marquise: Cut = {
  name: "marquise",
  title: "Marquise",
  // 6 × 3 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1.25, usual: 2, most: 3.5 },
  proportions: BRILLIANT_USUAL,
  proportionsSource: `${BRILLIANT_USUAL_SOURCE}, as the round brilliant's across the width`,
  weight: {
    diamond: {
      product: "area",
      factors: [
        [1.5, 0.00565],
        [1.75, 0.0057],
        [2, 0.0058],
        [2.25, 0.00583],
        [2.5, 0.00585],
        [2.75, 0.0059],
        [3, 0.00595],
      ],
      source: `${DIAMOND_SOURCE}; gemgate.com, marquise`,
      certainty: "standard",
    },
    coloured: {
      product: "area",
      factors: [[1, 0.0017]],
      source: "talk.jewelry thread 16956 (dendritics.com has 0.0016)",
      certainty: "one credible source",
    },
  },
  outline: ({ length, width }) => ({ segments: marquiseGirdle(length, width).arcs, stretch: 1 }),
  facets: ({ length, width }, proportions, tolerance) =>
    brilliant(marquiseGirdle(length, width), proportions, tolerance),
};
