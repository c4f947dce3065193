/**
 * Drops that hang and stand by turns.
 */
import { dropRowMotif } from "../../design/motifs/drop-row.js";
import type { Motif } from "./motif.js";
import { petal } from "./outlines.js";

/** A drop is round below and pointed above. */
const TIPS = [0, 1.4] as const;

/** Each has half the tile; it is no wider than this share of its length. */
const ROUNDEST = 0.62;

export const dropRow: Motif<typeof dropRowMotif> = {
  ...dropRowMotif,
  draw({ length, fullness }, { aspect }) {
    const end = (length * aspect) / 2;
    const width = fullness * Math.min(0.5, ROUNDEST * length * aspect);
    const one = (x: number, up: 1 | -1) => petal([x, -up * end], [x, up * end], width, TIPS);
    return { path: `${one(0, 1)} ${one(0.5, -1)}` };
  },
};
