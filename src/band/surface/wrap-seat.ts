/**
 * The wrap map of a band's seat, with the pattern's middle at the top of the ring.
 */

import { radians, TOP } from "../../base/units.js";
import type { Band } from "../band.js";
import { type Fit, FULL_COVER } from "../fit/fit.js";
import { meanSeatRadius } from "../profile/moments.js";
import { revolvedSurface } from "./revolved.js";
import { requireSmoothSeat } from "./smooth-seat.js";
import type { BandSurface } from "./surface.js";
import { taperedSurface } from "./tapered.js";

/** θ of the top of the ring, degrees from +x. */
const TOP_DEGREES = 90;

/**
 * The surface of the seat. Without a fit the reference radius is the seat's mean radius; of a band that tapers both are
 * those of the top, where the pattern is true.
 *
 * @param raised whether relief stands on the seat, which then must be smooth
 * @param keeps whether tiles of a band that tapers keep their size across; default no
 * @throws AnnuletError `seat-has-corner`
 */
export function wrapSeat(band: Band, fit: Fit | undefined, raised: boolean, keeps = false): BandSurface {
  if (raised) for (const angle of band.looks) requireSmoothSeat(band.seatAt(angle), "profile.outside");
  const place = {
    referenceRadius: fit?.referenceRadius ?? meanSeatRadius(band),
    startAngle: radians(TOP_DEGREES - (fit?.cover ?? FULL_COVER) / 2),
  };
  return band.revolved
    ? revolvedSurface({ ...place, line: band.seat })
    : taperedSurface({ ...place, chainAt: band.seatAt, trueAt: TOP, keeps });
}
