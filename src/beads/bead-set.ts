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

/**
 * Merges runs; where beads coincide the larger stays, and of those that are as large one in their mean: what two copies of a
 * tile share lies on what makes them copies, not at one of them.
 */
export function mergeRuns(runs: readonly (readonly Bead[])[]): BeadSet {
  const widest = runs.flat().reduce((most, bead) => Math.max(most, 2 * bead.radius), 0);
  const grid = new PointGrid<number>(widest);
  const beads: Place[] = [];
  const crowded = new Set<Bead>();
  const merged = runs.map((run, index) => {
    let count = 0;
    for (const bead of run) {
      const near = grid.near(bead.centre);
      const same = near.find((other) => coincide(beads[other].bead, bead));
      if (same !== undefined) {
        count++;
        const place = beads[same];
        if (Math.abs(bead.radius - place.bead.radius) <= ROUNDING) place.all.push(bead);
        else if (bead.radius > place.bead.radius) beads[same] = { bead, run: index, all: [bead] };
        continue;
      }
      if (near.some((other) => beads[other].run !== index && isCrowded(beads[other].bead, bead))) crowded.add(bead);
      grid.add(bead.centre, beads.push({ bead, run: index, all: [bead] }) - 1);
    }
    return count;
  });
  return { beads: beads.map(({ bead, all }) => middleOf(bead, all)), merged, crowded: [...crowded] };
}

/** Beads that are one. */
interface Place {
  /** The first of them, and number of its run. */
  readonly bead: Bead;
  readonly run: number;
  /** All of them that are as large. */
  readonly all: Bead[];
}

/** Beads that differ by less are the same, mm. */
const ROUNDING = 1e-6;

/** One bead in the mean of several; the first one itself where they differ by rounding. */
function middleOf(first: Bead, all: readonly Bead[]): Bead {
  if (all.every((bead) => distance(bead, first) <= ROUNDING)) return first;
  const sum = (of: (bead: Bead) => Bead["centre"]): Bead["centre"] => {
    const [x, y, z] = [0, 1, 2].map((k) => all.reduce((total, bead) => total + of(bead)[k], 0));
    return [x, y, z];
  };
  const [x, y, z] = sum(({ centre }) => centre);
  const [nx, ny, nz] = sum(({ outward }) => outward);
  const [count, length] = [all.length, Math.hypot(nx, ny, nz)];
  return {
    centre: [x / count, y / count, z / count],
    outward: [nx / length, ny / length, nz / length],
    radius: first.radius,
  };
}

function coincide(a: Bead, b: Bead): boolean {
  return distance(a, b) < SAME_BEAD * 2 * Math.min(a.radius, b.radius);
}

function isCrowded(a: Bead, b: Bead): boolean {
  return distance(a, b) < (1 - OVERLAP_LIMIT) * (a.radius + b.radius);
}

function distance(a: Bead, b: Bead): number {
  const x = a.centre[0] - b.centre[0];
  const y = a.centre[1] - b.centre[1];
  const z = a.centre[2] - b.centre[2];
  // The engine's own function takes six times as long (measured); nothing here is too large or too small to be squared.
  return Math.sqrt(x * x + y * y + z * z);
}
