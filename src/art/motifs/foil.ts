/**
 * Foils: the outline of circles set in a ring, as in tracery, round a boss.
 */

import { TURN } from "../../base/units.js";
import { foilMotif } from "../../design/motifs/foil.js";
import { LEAST_DETAIL, type Motif } from "./motif.js";
import { around, disc, repeat } from "./outlines.js";

/** Share of the tile's lesser side that the foils take up. */
const SPAN = 0.93;

/** Radius of the circles over that at which neighbours would touch. */
const OVERLAP = 1.2;

export const foil: Motif<typeof foilMotif> = {
  ...foilMotif,
  draw({ foils, line, boss }, { aspect }) {
    const radius = (SPAN * Math.min(1, aspect)) / 2;
    const touch = OVERLAP * Math.sin(TURN / (2 * foils));
    // Circles of radius touch · d about points d from the middle reach out to the radius.
    const d = radius / (1 + touch);
    const lobes = (r: number) => ({
      path: repeat(foils, (i) => disc(around([0.5, 0], (i * TURN) / foils, d), r)),
    });
    const [outer, inner] = [touch * d, (1 - line) * touch * d];
    // The inner circles meet on the line between two lobes, or end short of it: the boss keeps clear of there.
    const half = d * Math.sin(TURN / (2 * foils));
    const waist = d * Math.cos(TURN / (2 * foils)) - Math.sqrt(Math.max(inner ** 2 - half ** 2, 0));
    const middle = disc([0.5, 0], Math.max(waist, 0.1));
    const room = Math.max(waist, 0.1) - LEAST_DETAIL;
    const hollow = { union: [lobes(inner), { path: middle }] };
    return { union: [{ difference: [lobes(outer), hollow] }, { path: disc([0.5, 0], boss * room) }] };
  },
};
