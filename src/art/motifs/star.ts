/**
 * A star whose points are straight-sided.
 */
import { z } from "zod";
import { TURN } from "../../base/units.js";
import type { Motif } from "./motif.js";
import { around, polygon } from "./outlines.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  points: evenCount("points", [4, 8, 8]),
  waist: share("distance of the inner corners from the middle, share of the points'", [0.45, 0.75, 0.58]),
  soft: share("roundness of all corners, share of half a side", [0, 0.5, 0.12]),
});

/** Share of the tile's lesser side that the star takes up. */
const SPAN = 0.93;

export const star: Motif<typeof parameters.shape> = {
  name: "star",
  summary: "a star with four, six or eight points",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 2 },
  parameters,
  draw({ points, waist, soft }, { aspect }) {
    const radius = (SPAN * Math.min(1, aspect)) / 2;
    const corners = Array.from({ length: 2 * points }, (_, i) =>
      around([0.5, 0], (i * TURN) / (2 * points), i % 2 === 0 ? radius : waist * radius),
    );
    return { path: polygon(corners, soft) };
  },
};
