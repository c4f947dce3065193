/**
 * Zigzag bars, one above the other.
 */
import type { Point2 } from "../../base/math/point.js";
import { zigzagMotif } from "../../design/motifs/zigzag.js";
import type { Motif } from "./motif.js";
import { polygon, repeat } from "./outlines.js";

/** Height of all, share of the tile's. */
const SPAN = 0.92;

export const zigzag: Motif<typeof zigzagMotif> = {
  ...zigzagMotif,
  draw({ bars, rise, weight }, { aspect }) {
    const room = ((SPAN - rise) * aspect) / (bars - 1 + weight);
    const [half, swing] = [(weight * room) / 2, (rise * aspect) / 2];
    const line = (y: number): Point2[] => [
      [-0.5, y - swing],
      [0, y + swing],
      [0.5, y - swing],
      [1, y + swing],
      [1.5, y - swing],
    ];
    const bar = (y: number) => polygon([...line(y - half), ...line(y + half).reverse()]);
    return { path: repeat(bars, (i) => bar((i - (bars - 1) / 2) * room)) };
  },
};
