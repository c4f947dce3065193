/**
 * Sectors of the round about the finger axis, and what comes again round it.
 */

/** From one angle to a larger one, radians, counter-clockwise from +x seen from +z. */
export interface Sector {
  readonly from: number;
  readonly to: number;
  /** Whether what lies above the band's middle plane, z ≥ 0, is enough. Default no. */
  readonly upper?: boolean;
}

/** How a ring comes again. */
export interface RoundSymmetry {
  /** Equal parts of the round, 2 or more, or 1 where there are mirrors. */
  readonly units: number;
  /** Whether each of them is its own mirror image, so that half of it is enough. */
  readonly mirrored: boolean;
  /**
   * The sectors that are enough, each by itself, the best one first: half a unit from mirror to mirror (and of that what
   * lies above the middle plane, where that is a mirror too), or a unit that begins where the fewest beads are cut.
   */
  readonly sectors: readonly Sector[];
}
