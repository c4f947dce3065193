/**
 * The band's sizes as a workshop measures them: at the top of the ring, and where it tapers at each angle that is given.
 *
 * Thickness has one meaning wherever it is told: from the bore's narrowest circle to the outside's highest point, what stands
 * on it not counted. A rounded ridge or a hollow lies lower than the thickness that is drawn.
 */
import type { Band } from "../../band/band.js";
import { thicknessOf } from "../../band/profile/thickness-of.js";
import { taperOf } from "../../band/taper.js";
import { degrees } from "../../base/units.js";
import type { ProfileSpec } from "../../design/profile/profile.js";

/** Lengths in mm. */
export interface BandSizes {
  readonly width: number;
  readonly thickness: number;
  /** From the bore's narrowest circle to the highest point of all, measured on the solid: relief and beads counted. */
  readonly overall: number;
  /** Sizes at the back and at every other angle that the design names; only where the band tapers. */
  readonly taper?: readonly PlaceSizes[];
}

/** Sizes at one angle, degrees on the ring: the top is 90, the back 270. */
export interface PlaceSizes {
  readonly angle: number;
  readonly width: number;
  readonly thickness: number;
}

/** Angles are told to so many degrees: rounding. */
const TOLD = 1e-6;

/**
 * @param profile with the width as built
 * @param outermost farthest point of the solid from the finger axis, mm
 */
export function bandSizes(profile: ProfileSpec, band: Band, outermost: number): BandSizes {
  const sizes = { width: profile.width, thickness: thicknessOf(band), overall: outermost - band.boreRadius };
  const taper = taperOf(profile);
  if (taper === undefined) return sizes;
  const [, ...others] = taper.given;
  const places = others.map((angle) => {
    const turned = Math.round(degrees(angle) / TOLD) * TOLD;
    const section = band.sectionAt(angle);
    return { angle: turned - 360 * Math.floor(turned / 360), width: section.width, thickness: thicknessOf(section) };
  });
  return { ...sizes, taper: places.sort((a, b) => a.angle - b.angle) };
}
