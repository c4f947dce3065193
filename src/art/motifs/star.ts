/**
 * A star whose points are straight-sided.
 */
import { TURN } from "../../base/units.js";
import { starMotif } from "../../design/motifs/star.js";
import type { Motif } from "./motif.js";
import { around, polygon } from "./outlines.js";

/** Share of the tile's lesser side that the star takes up. */
const SPAN = 0.93;

export const star: Motif<typeof starMotif> = {
  ...starMotif,
  draw({ points, waist, soft }, { aspect }) {
    const radius = (SPAN * Math.min(1, aspect)) / 2;
    const corners = Array.from({ length: 2 * points }, (_, i) =>
      around([0.5, 0], (i * TURN) / (2 * points), i % 2 === 0 ? radius : waist * radius),
    );
    return { path: polygon(corners, soft) };
  },
};
