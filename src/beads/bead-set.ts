/**
 * All beads of a ring together: coincident ones merged, crowded ones found.
 */
import { PointGrid } from "../base/math/point-grid.js";
import type { Bead } from "./bead.js";

/** Beads whose centres are nearer than this share of the smaller diameter are one bead, met from two runs. */
const SAME_BEAD = 0.1;

/** Beads of different runs that overlap by more than this share of their mean diameter are crowded. */
export const OVERLAP_LIMIT = 0.15;

export interface BeadSet {
  readonly beads: readonly Bead[];
  /** For each run, how many of its beads were already there. */
  readonly merged: readonly number[];
  /** Beads of which some neighbour of another run lies too near without being the same. */
  readonly crowded: readonly Bead[];
}

/** Merges runs; where two beads coincide the larger stays. */
export function mergeRuns(runs: readonly (readonly Bead[])[]): BeadSet {
  const widest = runs.flat().reduce((most, bead) => Math.max(most, 2 * bead.radius), 0);
  const grid = new PointGrid<number>(widest);
  const beads: { bead: Bead; run: number }[] = [];
  const crowded = new Set<Bead>();
  const merged = runs.map((run, index) => {
    let count = 0;
    for (const bead of run) {
      const near = grid.near(bead.centre).filter((other) => distance(beads[other].bead, bead) < widest);
      const same = near.find((other) => coincide(beads[other].bead, bead));
      if (same !== undefined) {
        count++;
        if (bead.radius > beads[same].bead.radius) beads[same] = { bead, run: index };
        continue;
      }
      if (near.some((other) => beads[other].run !== index && isCrowded(beads[other].bead, bead))) crowded.add(bead);
      grid.add(bead.centre, beads.push({ bead, run: index }) - 1);
    }
    return count;
  });
  return { beads: beads.map(({ bead }) => bead), merged, crowded: [...crowded] };
}

function coincide(a: Bead, b: Bead): boolean {
  return distance(a, b) < SAME_BEAD * 2 * Math.min(a.radius, b.radius);
}

function isCrowded(a: Bead, b: Bead): boolean {
  return distance(a, b) < (1 - OVERLAP_LIMIT) * (a.radius + b.radius);
}

function distance(a: Bead, b: Bead): number {
  return Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1], a.centre[2] - b.centre[2]);
}
