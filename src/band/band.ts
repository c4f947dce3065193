/**
 * The band as a body: its cross-section at every angle. It is itself the cross-section at the top of the ring, so what is
 * the same all round, or is asked of the top alone, is read from it directly.
 */
import type { Segment } from "../base/math/curve.js";
import type { Profile } from "./profile/profile.js";
import type { SectionSizes } from "./taper.js";

/** Its own sizes are those at the top of the ring. */
export interface Band extends Profile {
  /** Whether the cross-section is the same at all angles. */
  readonly revolved: boolean;
  /** The cross-section at θ, radians. All have the same curves in the same order, and as many corners of their polylines. */
  readonly sectionAt: (angle: number) => Profile;
  /** Width and thickness at θ, mm. */
  readonly sizesAt: (angle: number) => SectionSizes;
  /** The seat's line at θ: as in `sectionAt`, without the rest. */
  readonly seatAt: (angle: number) => readonly Segment[];
  /** Angles, radians, at which to look where a sign of the whole round is wanted: enough that no size between them is far off. */
  readonly looks: readonly number[];
  /** How it bends round the finger where it bends most. */
  readonly bend: Bend;
}

/** What facets round the finger depend on, beside the tolerance. */
export interface Bend {
  /** Radius of the circle whose chords stand off as much, mm. */
  readonly radius: number;
  /** By how much an edge of the section, as it goes round, turns out of its own plane: mm for each radian; 0 for none. */
  readonly twist: number;
}
