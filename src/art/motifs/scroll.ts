/**
 * Scrolls: S-shaped lines that roll up at both ends, of half circles whose radii grow by even steps.
 */
import { scrollMotif } from "../../design/motifs/scroll.js";
import type { Motif } from "./motif.js";

export const scroll: Motif<typeof scrollMotif> = {
  ...scrollMotif,
  draw({ halves, length }) {
    const step = length / (4 * halves);
    // From the middle outwards along y = 0: ends of the half circles, and on which side of it each runs.
    const ends = [0.5];
    for (let i = halves; i > 0; i--) ends.push((ends.at(-1) as number) + 2 * i * step * (-1) ** (halves - i + 1));
    const roll = (mirror: (x: number) => number) =>
      ends
        .slice(1)
        .map((x, i) => `A ${(halves - i) * step} ${(halves - i) * step} 0 0 0 ${mirror(x)} 0`)
        .join(" ");
    return { path: `M 0.5 0 ${roll((x) => x)} M 0.5 0 ${roll((x) => 1 - x)}` };
  },
};
