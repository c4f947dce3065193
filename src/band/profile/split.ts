/**
 * Cuts a segment of the cross-section at a given w.
 */
import { type Segment, segmentLength, segmentStart, trimSegment } from "../../base/math/curve.js";
import { TURN } from "../../base/units.js";

/** Cuts nearer than this to an end are at the end, mm: rounding. */
const AT_END = 1e-9;

/**
 * The two parts of a segment before and after the first place where it is at `w`; a part without length is undefined.
 * Undefined where it never is.
 */
export function splitAtW(segment: Segment, w: number): readonly [Segment | undefined, Segment | undefined] | undefined {
  const length = segmentLength(segment);
  const places = placesAt(segment, w).filter((s) => s >= -AT_END && s <= length + AT_END);
  if (places.length === 0) return undefined;
  const s = Math.min(...places);
  return [
    s > AT_END ? trimSegment(segment, 0, length - s) : undefined,
    s < length - AT_END ? trimSegment(segment, s, 0) : undefined,
  ];
}

/** Arc lengths at which the segment, carried on past its ends, is at `w`. */
function placesAt(segment: Segment, w: number): number[] {
  if (segment.kind === "line") {
    const across = segment.to[0] - segment.from[0];
    if (Math.abs(across) < AT_END) return Math.abs(w - segmentStart(segment)[0]) < AT_END ? [0] : [];
    return [(segmentLength(segment) * (w - segment.from[0])) / across];
  }
  const cosine = (w - segment.centre[0]) / segment.radius;
  if (Math.abs(cosine) > 1 + AT_END) return [];
  const angle = Math.acos(Math.min(1, Math.max(-1, cosine)));
  const turn = Math.sign(segment.sweep);
  const slack = AT_END / segment.radius;
  return [angle, -angle].map((a) => {
    const open = turn * (a - segment.start) + slack;
    return segment.radius * (open - TURN * Math.floor(open / TURN) - slack);
  });
}
