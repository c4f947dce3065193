/**
 * Basket work: blocks of level bars and blocks of upright bars by turns.
 */
import { basketMotif } from "../../design/motifs/basket.js";
import type { Motif } from "./motif.js";
import { repeat, rod } from "./outlines.js";

/** Ends of the bars keep this much clear of the next block, share of the block's side. */
const CLEAR = 0.07;

export const basket: Motif<typeof basketMotif> = {
  ...basketMotif,
  draw({ bars, width }, { aspect }) {
    const [w, h] = [1 / 2, aspect / 2];
    const place = (i: number) => (i + 0.5) / bars - 0.5;
    const level = (x: number, y: number) => {
      const wide = (width * h) / bars;
      const end = w * (0.5 - CLEAR) - wide / 2;
      return repeat(bars, (i) => rod([x - end, y + place(i) * h], [x + end, y + place(i) * h], wide));
    };
    const upright = (x: number, y: number) => {
      const wide = (width * w) / bars;
      const end = h * (0.5 - CLEAR) - wide / 2;
      return repeat(bars, (i) => rod([x + place(i) * w, y - end], [x + place(i) * w, y + end], wide));
    };
    return { path: [level(0, h / 2), upright(w, h / 2), upright(0, -h / 2), level(w, -h / 2)].join(" ") };
  },
};
