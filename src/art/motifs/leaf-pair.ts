/**
 * Leaves in pairs on a stem along the band.
 */

import { radians } from "../../base/units.js";
import { leafPairMotif } from "../../design/motifs/leaf-pair.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { around, box, petal, repeat } from "./outlines.js";

/** Height of all, share of the tile's; width of the stem, share of the tile's width. */
const SPAN = 0.9;
const STEM = 0.07;

/** Leaves are round at the stem and pointed outside. */
const TIPS = [0.6, 1.1] as const;

/** Greatest width of a leaf, share of its length. */
const ROUNDEST = 0.36;

export const leafPair: Motif<typeof leafPairMotif> = {
  ...leafPairMotif,
  draw({ pairs, lean, fullness }, { aspect }) {
    const turn = radians(lean);
    const pitch = 1 / pairs;
    // From the far edge of the stem, so that a leaf leaves it with some width.
    const length = (SPAN * aspect + STEM) / 2 / Math.sin(turn);
    const room = pitch * Math.sin(turn) - LEAST_DETAIL;
    const width = fullness * Math.min(room, ROUNDEST * length);
    const pair = (i: number) => {
      const foot = (i + 0.5) * pitch - (length * Math.cos(turn)) / 2;
      const leaf = (side: 1 | -1) => {
        const from = [foot, (-side * STEM) / 2] as const;
        return petal(from, around(from, side * turn, length), width, TIPS);
      };
      return `${leaf(1)} ${leaf(-1)}`;
    };
    return { path: `${box(0, 1, -STEM / 2, STEM / 2)} ${repeat(pairs, pair)}` };
  },
};
