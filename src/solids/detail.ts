/**
 * Levels of detail: how coarse the mesh may be. Art, repeats and the places of beads are the same at each.
 */

import { SIX_SIDED_DEVIATION } from "../beads/six-sided-bead.js";

/** Sizes that set how fine a ring is built. */
export interface DetailLevel {
  /** The mesh's tolerance is at least this, mm. */
  readonly tolerance: number;
  /** Largest deviation of a bead's mesh as a share of its radius, however large the tolerance. */
  readonly bead: number;
  /** Whether beads are united with each other before they meet the band: less work, other last digits. */
  readonly gathersBeads: boolean;
}

/** `full` keeps the design's tolerance; `draft` is for looking at a design while it changes: small beads are six-sided. */
export const detailLevels = {
  full: { tolerance: 0, bead: 0.04, gathersBeads: false },
  draft: { tolerance: 0.05, bead: SIX_SIDED_DEVIATION, gathersBeads: true },
} as const satisfies Record<string, DetailLevel>;

/** How fine a ring is built. */
export type Detail = keyof typeof detailLevels;
