/**
 * The band as a body: its cross-section at every angle. It is itself the cross-section at the top of the ring, so what is
 * the same all round, or is asked of the top alone, is read from it directly.
 */
import type { ProfileSpec } from "../design/profile/profile.js";
import { buildProfile, type Profile } from "./profile/profile.js";

/** Its own sizes are those at the top of the ring. */
export interface Band extends Profile {
  /** Whether the cross-section is the same at all angles. */
  readonly revolved: boolean;
  /** The cross-section at θ, radians. All have the same curves in the same order, and as many corners of their polylines. */
  readonly sectionAt: (angle: number) => Profile;
  /** Angles, radians, between whose sections any other's sizes lie: places to look at where a sign of the whole round is wanted. */
  readonly looks: readonly number[];
}

/**
 * The band of a design.
 *
 * @param spec the profile part of a design, defaults filled in
 * @param boreRadius radius of the bore's narrowest circle, mm, above 0
 * @param tolerance largest distance of a section's polyline from its exact outline, mm, above 0
 * @throws AnnuletError as `buildProfile`
 */
export function makeBand(spec: ProfileSpec, boreRadius: number, tolerance: number): Band {
  const profile = buildProfile(spec, boreRadius, tolerance);
  return { ...profile, revolved: true, sectionAt: () => profile, looks: [0] };
}
