/**
 * A braid: waves that follow each other at even distances.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { repeat } from "./outlines.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  strands: count("strands", [2, 3, 3]),
  swing: share("height of the strands' middle lines, share of the tile's", [0.6, 0.7, 0.68]),
});

/** Handle of a cubic that follows half a sine wave, share of its length (closest in the mean; computed, from memory). */
const HANDLE = 0.3642;

export const braid: Motif<typeof parameters.shape> = {
  name: "braid",
  summary: "two or three waves that cross each other",
  group: "p2mg",
  aspect: { natural: 0.7, least: 0.6, most: 1 },
  ribbon: { share: 0.12, join: "round", ends: "butt" },
  parameters,
  draw({ strands, swing }, { aspect }) {
    const top = (swing * aspect) / 2;
    const h = HANDLE / 2;
    const wave = (i: number) => {
      const x = i / strands;
      const half = (from: number, y: number) => `C ${from + h} ${y} ${from + 0.5 - h} ${-y} ${from + 0.5} ${-y}`;
      return `M ${x} ${top} ${half(x, top)} ${half(x + 0.5, -top)}`;
    };
    return { path: repeat(strands, wave) };
  },
};
