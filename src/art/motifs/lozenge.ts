/**
 * A lozenge: four sides between the middles of the tile's borders, straight or bowed.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";
import { share } from "./parameter.js";

const parameters = z.strictObject({
  width: share("width, share of the tile's", [0.4, 0.94, 0.9]),
  height: share("height, share of the tile's", [0.4, 0.92, 0.9]),
  bow: share(
    "how far the sides' control points stand from straight towards the corner of the box round it (below 0: towards the middle), share of the way",
    [-0.1, 0.8, 0],
  ),
});

export const lozenge: Motif<typeof parameters.shape> = {
  name: "lozenge",
  summary: "four sides between the middles of the tile's borders, straight or bowed",
  group: "p2mm",
  aspect: { natural: 1, least: 0.8, most: 1.3 },
  parameters,
  draw({ width, height, bow }, { aspect }) {
    const [a, b] = [width / 2, (height * aspect) / 2];
    const out = (1 + bow) / 2;
    const side = (from: readonly [number, number], to: readonly [number, number]) =>
      `Q ${0.5 + out * (from[0] + to[0])} ${out * (from[1] + to[1])} ${0.5 + to[0]} ${to[1]}`;
    const [right, top, left, bottom] = [[a, 0] as const, [0, b] as const, [-a, 0] as const, [0, -b] as const];
    const sides = [side(right, top), side(top, left), side(left, bottom), side(bottom, right)];
    return { path: `M ${0.5 + a} 0 ${sides.join(" ")} Z` };
  },
};
