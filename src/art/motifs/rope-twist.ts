/**
 * A twisted rope seen from the side: strands that run aslant from edge to edge.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { repeat } from "./outlines.js";
import { count, share } from "./parameter.js";

const parameters = z.strictObject({
  strands: count("strands along the tile", [2, 3, 3]),
  slant: share("how far each strand runs along the band, share of the tile's width", [0.25, 0.5, 0.4]),
  gap: share("gap between the strands along the band, share of the room that each has", [0.3, 0.42, 0.32]),
});

/** Height of the rope, share of the tile's. */
const SPAN = 0.9;

export const ropeTwist: Motif<typeof parameters.shape> = {
  name: "rope-twist",
  summary: "strands aslant from edge to edge, as of a twisted rope",
  group: "p2",
  aspect: { natural: 0.7, least: 0.6, most: 1.2 },
  parameters,
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
