/**
 * Scrolls: S-shaped lines that roll up at both ends, of half circles whose radii grow by even steps.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  halves: count("half turns that each end rolls up", [2, 3, 3]),
  length: share("length of each scroll's middle line, share of the tile's width", [0.78, 0.84, 0.84]),
});

export const scroll: Motif<typeof parameters.shape> = {
  name: "scroll",
  summary: "S-shaped lines that roll up at both ends",
  group: "p2",
  aspect: { natural: 0.6, least: 0.56, most: 1.2 },
  ribbon: { share: 0.07, join: "round", ends: "round" },
  parameters,
  draw({ halves, length }) {
    const step = length / (4 * halves);
    // From the middle outwards along y = 0: ends of the half circles, and on which side of it each runs.
    const ends = [0.5];
    for (let i = halves; i > 0; i--) ends.push((ends.at(-1) as number) + 2 * i * step * (-1) ** (halves - i + 1));
    const roll = (mirror: (x: number) => number) =>
      ends
        .slice(1)
        .map((x, i) => `A ${(halves - i) * step} ${(halves - i) * step} 0 0 0 ${mirror(x)} 0`)
        .join(" ");
    return { path: `M 0.5 0 ${roll((x) => x)} M 0.5 0 ${roll((x) => 1 - x)}` };
  },
};
