/**
 * The band of a design: the same all round, or one that tapers.
 */
import type { ProfileSpec } from "../design/profile/profile.js";
import type { Band } from "./band.js";
import { drawProfile } from "./profile/profile.js";
import { taperOf } from "./taper.js";
import { taperedBand } from "./tapered-band.js";

/**
 * The band of a design.
 *
 * @param spec the profile part of a design, defaults filled in
 * @param boreRadius radius of the bore's narrowest circle, mm, above 0
 * @param tolerance largest distance of a section's polyline from its exact outline, mm, above 0
 * @throws AnnuletError as `drawProfile` and `taperedSections`
 */
export function makeBand(spec: ProfileSpec, boreRadius: number, tolerance: number): Band {
  const taper = taperOf(spec);
  if (taper !== undefined) return taperedBand(spec, taper, boreRadius, tolerance);
  const profile = drawProfile(spec, boreRadius, tolerance);
  const bend = { radius: profile.outsideRadius, twist: 0 };
  return {
    ...profile,
    revolved: true,
    sectionAt: () => profile,
    seatAt: () => profile.seat,
    sizesAt: () => profile,
    looks: [0],
    bend,
  };
}
