/**
 * Reeds: rods that stand across the band, every second one shorter.
 */
import { reedMotif } from "../../design/motifs/reed.js";
import type { Motif } from "./motif.js";
import { repeat, rod } from "./outlines.js";

/** Height of the longer rods, share of the tile's. */
const LENGTH = 0.9;

export const reed: Motif<typeof reedMotif> = {
  ...reedMotif,
  draw({ rods, width, step }, { aspect }) {
    const wide = width / rods;
    const one = (i: number) => {
      const end = (LENGTH * aspect * (i % 2 === 0 ? 1 : 1 - step) - wide) / 2;
      return rod([i / rods, -end], [i / rods, end], wide);
    };
    return { path: repeat(rods, one) };
  },
};
