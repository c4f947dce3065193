/**
 * A lozenge: four sides between the middles of the tile's borders, straight or bowed.
 */
import { lozengeMotif } from "../../design/motifs/lozenge.js";
import type { Motif } from "./motif.js";

export const lozenge: Motif<typeof lozengeMotif> = {
  ...lozengeMotif,
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
