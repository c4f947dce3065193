/**
 * Waves that break along the band.
 */
import { waveCrestMotif } from "../../design/motifs/wave-crest.js";
import type { Motif } from "./motif.js";
import { repeat } from "./outlines.js";

/** A crest from trough to trough: corners and handles, x in wavelengths, y from the trough (0) to the crest (1). */
const CREST = [
  [0.3, 0, 0.28, 1, 0.62, 1],
  [0.84, 1, 0.97, 0.82, 0.94, 0.58],
  [0.93, 0.52, 0.86, 0.52, 0.84, 0.57],
  [0.82, 0.7, 0.7, 0.76, 0.62, 0.66],
  [0.48, 0.46, 0.6, 0, 1, 0],
] as const;

export const waveCrest: Motif<typeof waveCrestMotif> = {
  ...waveCrestMotif,
  draw({ waves, rise, depth }, { aspect }) {
    const low = (-rise * aspect) / 2;
    const trough = low + depth * rise * aspect;
    const at = (i: number, x: number, y: number) => `${(i + x) / waves} ${trough + y * (-low - trough)}`;
    const crest = (i: number) =>
      CREST.map(([ax, ay, bx, by, cx, cy]) => `C ${at(i, ax, ay)} ${at(i, bx, by)} ${at(i, cx, cy)}`).join(" ");
    return { path: `M 0 ${low} L ${at(0, 0, 0)} ${repeat(waves, crest)} V ${low} Z` };
  },
};
