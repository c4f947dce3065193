/**
 * The pear brilliant: half a circle, and two arcs from it to the point at +x. The culet lies under the circle's middle.
 */
import type { Arc } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { type BrilliantGirdle, brilliant } from "../brilliant.js";
import type { Cut } from "../cut.js";
import { COLOURED_SOURCE, DIAMOND_SOURCE } from "../weight-sources.js";
import { pointedArc } from "./marquise.js";
import { BRILLIANT_USUAL, BRILLIANT_USUAL_SOURCE } from "./usual.js";

/** Arcs from main facet to main facet: along each side of the point, and round the half circle. */
const SIDE_ARCS = 2;
const ROUND_ARCS = 4;

/** From the point at +x round. */
function pearGirdle(length: number, width: number): BrilliantGirdle {
  const reach = length - width / 2;
  // The half circle's middle, left of the middle of the length.
  const x = width / 2 - length / 2;
  const { radius, sweep } = pointedArc(reach, width);
  const arcs = (centre: Point2, r: number, start: number, turn: number, count: number) =>
    Array.from(
      { length: count },
      (_, i): Arc => ({
        kind: "arc",
        centre,
        radius: r,
        start: start + (i * turn) / count,
        sweep: turn / count,
      }),
    );
  const upper = arcs([x, width / 2 - radius], radius, Math.PI / 2 - sweep, sweep, SIDE_ARCS);
  const back = arcs([x, 0], width / 2, Math.PI / 2, Math.PI, ROUND_ARCS);
  const lower = arcs([x, radius - width / 2], radius, (3 * Math.PI) / 2, sweep, SIDE_ARCS);
  const all = [...upper, ...back, ...lower];
  const along = ({ start }: Arc): Point2 => [-Math.sin(start), Math.cos(start)];
  return { width, arcs: all, tangents: [[0, 1], ...all.slice(1).map(along)], centre: [x, 0], stretch: 1 };
}

export const pear: Cut = {
  name: "pear",
  title: "Pear",
  // 6 × 4 is a common size (common practice, no source); the limits are chosen.
  ratio: { least: 1.2, usual: 1.5, most: 3 },
  proportions: BRILLIANT_USUAL,
  proportionsSource: `${BRILLIANT_USUAL_SOURCE}, as the round brilliant's across the width`,
  weight: {
    diamond: {
      product: "area",
      factors: [
        [1.25, 0.00615],
        [1.5, 0.006],
        [1.66, 0.0059],
        [2, 0.00575],
      ],
      source: DIAMOND_SOURCE,
      certainty: "standard",
    },
    coloured: { product: "area", factors: [[1, 0.0018]], source: COLOURED_SOURCE, certainty: "standard" },
  },
  outline: ({ length, width }) => ({ segments: pearGirdle(length, width).arcs, stretch: 1 }),
  facets: ({ length, width }, proportions, tolerance) => brilliant(pearGirdle(length, width), proportions, tolerance),
};
