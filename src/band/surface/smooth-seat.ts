/**
 * Whether a seat is smooth enough to carry relief.
 */
import { AnnuletError } from "../../base/errors.js";
import { type Segment, segmentEnd, segmentLength, tangentAt } from "../../base/math/curve.js";

/** A corner of the seat turns by more than this, radians; less is rounding of the tangent fillets. */
const CORNER = 1e-6;

/**
 * Checks that the seat has no corner, so that its normal, and with it the relief, is everywhere defined.
 *
 * @param path where the seat's form stands in the document
 * @throws AnnuletError `seat-has-corner` with the corner's place
 */
export function requireSmoothSeat(seat: readonly Segment[], path: string): void {
  for (let i = 0; i + 1 < seat.length; i++) {
    const [ax, ay] = tangentAt(seat[i], segmentLength(seat[i]));
    const [bx, by] = tangentAt(seat[i + 1], 0);
    const turn = Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
    if (turn <= CORNER) continue;
    const [w] = segmentEnd(seat[i]);
    throw new AnnuletError({
      code: "seat-has-corner",
      message: `the seat has a corner at w ${w.toFixed(3)} mm, so a pattern on it has no direction to stand in`,
      path,
      allowed: "a seat without corners",
      hint: "round the corner (a knife edge: give it a ridge radius), or keep the pattern off it with a narrower seat",
    });
  }
}
