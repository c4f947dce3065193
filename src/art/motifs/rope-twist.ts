/**
 * A twisted rope seen from the side: strands that run aslant from edge to edge.
 */
import { ropeTwistMotif } from "../../design/motifs/rope-twist.js";
import type { Motif } from "./motif.js";
import { repeat } from "./outlines.js";

/** Height of the rope, share of the tile's. */
const SPAN = 0.9;

export const ropeTwist: Motif<typeof ropeTwistMotif> = {
  ...ropeTwistMotif,
  draw({ strands, slant, gap }, { aspect }) {
    const [pitch, top] = [1 / strands, (SPAN * aspect) / 2];
    const half = ((1 - gap) * pitch) / 2;
    const one = (i: number) => {
      const x = i * pitch;
      const [a, b] = [x - slant / 2, x + slant / 2];
      const lean = slant * 0.3;
      const up = `C ${a + half + lean} ${-top * 0.6} ${b + half - lean} ${top * 0.6} ${b + half} ${top}`;
      const down = `C ${b - half - lean} ${top * 0.6} ${a - half + lean} ${-top * 0.6} ${a - half} ${-top}`;
      return `M ${a - half} ${-top} H ${a + half} ${up} H ${b - half} ${down} Z`;
    };
    return { path: repeat(strands, one) };
  },
};
