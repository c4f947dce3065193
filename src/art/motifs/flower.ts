/**
 * A flower: petals round an eye.
 */

import { TURN } from "../../base/units.js";
import { flowerMotif } from "../../design/motifs/flower.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { around, disc, petal, widestAt } from "./outlines.js";

/** Share of the tile's lesser side that the flower takes up. */
const SPAN = 0.93;

/** Petals are pointed at the eye and round outside. */
const TIPS = [1, 0.25] as const;

export const flower: Motif<typeof flowerMotif> = {
  ...flowerMotif,
  draw({ petals, eye, fullness }, { aspect }) {
    const radius = (SPAN * Math.min(1, aspect)) / 2;
    const inner = eye * radius + LEAST_DETAIL;
    const widest = inner + (radius - inner) * widestAt(TIPS);
    const room = 2 * widest * Math.sin(TURN / (2 * petals)) - LEAST_DETAIL;
    // Four petals have more room than a petal may be wide without becoming a disc.
    const width = fullness * Math.min(room, ROUNDEST * (radius - inner));
    const one = petal(around([0.5, 0], 0, inner), around([0.5, 0], 0, radius), width, TIPS);
    return { union: [{ path: disc([0.5, 0], eye * radius) }, { turns: petals, of: { path: one } }] };
  },
};

/** Greatest width of a petal, share of its length. */
const ROUNDEST = 0.95;
