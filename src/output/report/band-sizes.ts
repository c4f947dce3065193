/**
 * The band's sizes as a workshop measures them: at the top of the ring, and where it tapers at each angle that is given.
 */
import { taperOf } from "../../band/taper.js";
import { degrees } from "../../base/units.js";
import type { ProfileSpec } from "../../design/profile/profile.js";

/** Lengths in mm. */
export interface BandSizes {
  readonly width: number;
  readonly thickness: number;
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

/** @param profile with the width as built */
export function bandSizes(profile: ProfileSpec): BandSizes {
  const { width, thickness } = profile;
  const taper = taperOf(profile);
  if (taper === undefined) return { width, thickness };
  const [, ...others] = taper.given;
  const places = others.map((angle) => {
    const turned = Math.round(degrees(angle) / TOLD) * TOLD;
    return { angle: turned - 360 * Math.floor(turned / 360), ...taper.sizesAt(angle) };
  });
  return { width, thickness, taper: places.sort((a, b) => a.angle - b.angle) };
}
