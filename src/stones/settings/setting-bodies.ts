/**
 * What a setting is made of, in the order of work.
 */
import type { Mesh } from "../../mesh/mesh.js";

/** Bodies of one stone or of a row; in the stone's coordinates, or in space once they are laid there. */
export interface SettingBodies {
  /** Cut out before walls are raised: what of relief would reach over the stone. */
  readonly clears: readonly Mesh[];
  /** Walls, collars, prongs: added. */
  readonly walls: readonly Mesh[];
  /** Bearings, pilots, grooves, notches: cut out of all that. */
  readonly hollows: readonly Mesh[];
  /** Added last. */
  readonly grains: readonly Mesh[];
}

export const NO_BODIES: SettingBodies = { clears: [], walls: [], hollows: [], grains: [] };

/** How much of a setting is cast: the pilot alone, the bearing too, or all that holds the stone. */
export type Ready = "pilot" | "bearing" | "full";
