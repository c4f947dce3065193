/**
 * The wrap map of a band's seat, with the pattern's middle at the top of the ring.
 */

import { radians } from "../../base/units.js";
import { type Fit, FULL_COVER } from "../fit/fit.js";
import { meanSeatRadius } from "../profile/moments.js";
import type { Profile } from "../profile/profile.js";
import { revolvedSurface } from "./revolved.js";
import { requireSmoothSeat } from "./smooth-seat.js";
import type { BandSurface } from "./surface.js";

/** θ of the top of the ring, degrees from +x. */
const TOP = 90;

/**
 * The wrap of the seat. Without a fit the reference radius is the seat's mean radius.
 *
 * @param raised whether relief stands on the seat, which then must be smooth
 * @throws AnnuletError `seat-has-corner`
 */
export function wrapSeat(profile: Profile, fit: Fit | undefined, raised: boolean): BandSurface {
  if (raised) requireSmoothSeat(profile.seat, "profile.outside");
  return revolvedSurface({
    line: profile.seat,
    referenceRadius: fit?.referenceRadius ?? meanSeatRadius(profile),
    startAngle: radians(TOP - (fit?.cover ?? FULL_COVER) / 2),
  });
}
