/**
 * What castability is judged on: the finished piece, as a solid and as what was laid out for it.
 */

import type { Band } from "../../band/band.js";
import type { BandSurface } from "../../band/surface/surface.js";
import type { Bead } from "../../beads/bead.js";
import type { BeadRunReport } from "../../beads/bead-report.js";
import type { Marks } from "../../marks/marks.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Pattern } from "../../pattern/laid-out.js";
import type { PlacedStones } from "../../stones/place-stones.js";

export interface JudgedPiece {
  readonly mesh: Mesh;
  readonly profile: Band;
  readonly wrap: BandSurface;
  readonly pattern: Pattern;
  readonly marks: Marks;
  readonly beads: readonly Bead[];
  readonly runs: readonly BeadRunReport[];
  readonly stones: PlacedStones;
  /** Handles of the solid, and how many the design implies. */
  readonly handles: { readonly found: number; readonly implied: number };
  /** Rays that look for its walls (`rays.ts`). */
  readonly rays: number;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
}

/** One thing measured: the worst figure with its places. */
export interface Measured {
  readonly figure: number;
  readonly places: readonly Place[];
  /** What is added to the message. Default nothing. */
  readonly more?: string;
}

/** A place as it was found: on the flat pattern, (u, v) in mm, or in space. */
export type Place =
  | { readonly flat: readonly [u: number, v: number] }
  | { readonly space: readonly [number, number, number] };

/** The worst of some figures. */
export function worst(keep: "at least" | "at most", all: readonly (Measured | undefined)[]): Measured | undefined {
  const order = keep === "at least" ? 1 : -1;
  return all.reduce((most, one) => {
    if (one === undefined) return most;
    return most === undefined || order * (one.figure - most.figure) < 0 ? one : most;
  }, undefined);
}
