/**
 * A braid: waves that follow each other at even distances.
 */
import { braidMotif } from "../../design/motifs/braid.js";
import type { Motif } from "./motif.js";
import { repeat } from "./outlines.js";

/** Handle of a cubic that follows half a sine wave, share of its length (closest in the mean; computed, from memory). */
const HANDLE = 0.3642;

export const braid: Motif<typeof braidMotif> = {
  ...braidMotif,
  draw({ strands, swing }, { aspect }) {
    const top = (swing * aspect) / 2;
    const h = HANDLE / 2;
    const wave = (i: number) => {
      const x = i / strands;
      const half = (from: number, y: number) => `C ${from + h} ${y} ${from + 0.5 - h} ${-y} ${from + 0.5} ${-y}`;
      return `M ${x} ${top} ${half(x, top)} ${half(x + 0.5, -top)}`;
    };
    return { path: repeat(strands, wave) };
  },
};
