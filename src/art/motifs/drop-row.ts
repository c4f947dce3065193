/**
 * Drops that hang and stand by turns.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { petal } from "./outlines.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  length: share("length of the drops, share of the tile's height", [0.7, 0.9, 0.86]),
  fullness: share("width of the drops, share of the room that each has", [0.6, 0.86, 0.8]),
});

/** A drop is round below and pointed above. */
const TIPS = [0, 1.4] as const;

/** Each has half the tile; it is no wider than this share of its length. */
const ROUNDEST = 0.62;

export const dropRow: Motif<typeof parameters.shape> = {
  name: "drop-row",
  summary: "drops that hang and stand by turns",
  group: "p2mg",
  aspect: { natural: 0.9, least: 0.7, most: 1.5 },
  parameters,
  draw({ length, fullness }, { aspect }) {
    const end = (length * aspect) / 2;
    const width = fullness * Math.min(0.5, ROUNDEST * length * aspect);
    const one = (x: number, up: 1 | -1) => petal([x, -up * end], [x, up * end], width, TIPS);
    return { path: `${one(0, 1)} ${one(0.5, -1)}` };
  },
};
