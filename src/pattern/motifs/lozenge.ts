/**
 * A lozenge: four sides between the middles of the tile's borders, straight or bowed.
 */
import { z } from "zod";
import type { Motif } from "./motif.js";

const parameters = z.strictObject({
  width: z.number().min(0.05).max(1).default(0.9).describe("width, share of the tile's, 0.05 to 1; default 0.9"),
  height: z.number().min(0.05).max(1).default(0.9).describe("height, share of the tile's, 0.05 to 1; default 0.9"),
  bow: z
    .number()
    .min(-0.8)
    .max(0.8)
    .default(0)
    .describe(
      "how far the sides' control points stand from straight, towards the corner of the box round it (below 0: towards the middle), -0.8 to 0.8; default 0",
    ),
});

export const lozenge: Motif<typeof parameters.shape> = {
  name: "lozenge",
  summary: "four sides between the middles of the tile's borders, straight or bowed",
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
