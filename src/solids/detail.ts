/**
 * Levels of detail: how coarse the mesh may be. Art, repeats and the places of beads are the same at each.
 */

export interface DetailLevel {
  /** The mesh's tolerance is at least this, mm. */
  readonly tolerance: number;
  /** Largest deviation of a bead's mesh as a share of its radius, however large the tolerance. */
  readonly bead: number;
}

/** `full` keeps the design's tolerance; `draft` is for looking at a design while it changes: its beads are icosahedra. */
export const detailLevels = {
  full: { tolerance: 0, bead: 0.04 },
  draft: { tolerance: 0.05, bead: 0.12 },
} as const satisfies Record<string, DetailLevel>;

export type Detail = keyof typeof detailLevels;
