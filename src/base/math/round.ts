/**
 * Sectors of the round about the finger axis, and what comes again round it.
 */
import { TURN } from "../units.js";

/** From one angle to a larger one, radians, counter-clockwise from +x seen from +z. */
export interface Sector {
  readonly from: number;
  readonly to: number;
  /** Whether what lies above the band's middle plane, z ≥ 0, is enough. Default no. */
  readonly upper?: boolean;
}

/** Angles that differ by less are one, radians: rounding. */
const SAME_ANGLE = 1e-9;

/** Whether a sector is the whole round: it has no ends. */
export function isWholeRound({ from, to }: Sector): boolean {
  return to - from >= TURN - SAME_ANGLE;
}

/** Whether a sector is half a turn or more: one plane holds both its ends. */
export function isHalfTurn({ from, to }: Sector): boolean {
  return to - from >= TURN / 2 - SAME_ANGLE;
}

/** How a ring comes again. */
export interface RoundSymmetry {
  /** Equal parts of the round, 2 or more, or 1 where there are mirrors or half turns. */
  readonly units: number;
  /** Whether each of them is its own mirror image, so that half of it is enough. */
  readonly mirrored: boolean;
  /**
   * Whether each of them is its own image under a half turn about the line from the finger axis through its middle, so that
   * half of it is enough. Asked only where there are no mirrors. Default no.
   */
  readonly halfTurned?: boolean;
  /**
   * The sectors that are enough, each by itself, the best one first: half a unit from mirror to mirror or from half turn to half turn, or a unit that begins
   * where the fewest beads are cut; of either what lies above the middle plane, where that is a mirror. Where that is the
   * only one: the whole round above it.
   */
  readonly sectors: readonly Sector[];
}
