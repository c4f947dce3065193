/**
 * Reeds: rods that stand across the band, every second one shorter.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { repeat, rod } from "./outlines.js";
import { evenCount, share } from "./parameter.js";

const parameters = z.strictObject({
  rods: evenCount("rods along the tile", [2, 6, 4]),
  width: share("width of the rods, share of the room that each has", [0.45, 0.7, 0.62]),
  step: share("how much shorter every second rod is, share of the others' length", [0, 0.5, 0.25]),
});

/** Height of the longer rods, share of the tile's. */
const LENGTH = 0.9;

export const reed: Motif<typeof parameters.shape> = {
  name: "reed",
  summary: "upright rods with round ends, every second one shorter",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 3 },
  parameters,
  draw({ rods, width, step }, { aspect }) {
    const wide = width / rods;
    const one = (i: number) => {
      const end = (LENGTH * aspect * (i % 2 === 0 ? 1 : 1 - step) - wide) / 2;
      return rod([i / rods, -end], [i / rods, end], wide);
    };
    return { path: repeat(rods, one) };
  },
};
