/**
 * A chain: links seen from the front and from the side by turns.
 */
import { z } from "zod";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { oval, rod } from "./outlines.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  line: share("thickness of the links, share of the tile's width", [0.07, 0.12, 0.1]),
  length: share("length of the links seen from the front, share of the tile's width", [0.66, 0.78, 0.72]),
  height: share("height of those links, share of the tile's", [0.65, 0.88, 0.84]),
});

export const chain: Motif<typeof parameters.shape> = {
  name: "chain",
  summary: "links seen from the front and from the side by turns",
  group: "p2mm",
  aspect: { natural: 0.6, least: 0.55, most: 0.9 },
  parameters,
  draw({ line, length, height }, { aspect }) {
    const [rx, ry] = [length / 2, (height * aspect) / 2];
    const front = {
      difference: [{ path: oval([0.5, 0], rx, ry) }, { path: oval([0.5, 0], rx - line, ry - line) }],
    };
    // The link between reaches through the bend, and shows its round end inside.
    const end = 0.5 - rx + line + LEAST_DETAIL;
    return { union: [front, { path: rod([-end, 0], [end, 0], line) }] };
  },
};
