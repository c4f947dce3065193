/**
 * How much metal stands between the bore and the seat, straight out from the axis, where it is least.
 */
import { pointAt, type Segment, segmentEnd, segmentLength, segmentStart } from "../../base/math/curve.js";
import type { ExactProfile } from "./profile.js";

/** Places along each curve of the seat where it is measured; between them an arc of the seat bends by next to nothing. */
const PLACES = 256;

/** mm; over the span of the bore that its rounded edges leave, all of the seat where they leave nothing. */
export function seatWall({
  seat,
  boreFace,
  boreRadius,
}: Pick<ExactProfile, "seat" | "boreFace" | "boreRadius">): number {
  const places = seat.flatMap((segment) => {
    const length = segmentLength(segment);
    return Array.from({ length: PLACES + 1 }, (_, i) => pointAt(segment, (length * i) / PLACES));
  });
  const walls = places.map(([w, r]) => {
    const under = boreFace.find((segment) => isOver(segment, w));
    return { wall: r - (under === undefined ? boreRadius : radiusOf(under, w)), over: under !== undefined };
  });
  const over = walls.filter((one) => one.over);
  return Math.min(...(over.length > 0 ? over : walls).map(({ wall }) => wall));
}

/** Rounding, mm. */
const SLACK = 1e-9;

function isOver(segment: Segment, w: number): boolean {
  const [a, b] = [segmentStart(segment)[0], segmentEnd(segment)[0]];
  return w >= Math.min(a, b) - SLACK && w <= Math.max(a, b) + SLACK;
}

/** The radius at w of a curve that runs once along the bore. A comfort bore's arc bulges towards the axis. */
function radiusOf(segment: Segment, w: number): number {
  if (segment.kind === "line") {
    const { from, to } = segment;
    return from[1] + ((to[1] - from[1]) * (w - from[0])) / (to[0] - from[0]);
  }
  const [cw, cr] = segment.centre;
  return cr - Math.sqrt(Math.max(segment.radius ** 2 - (w - cw) ** 2, 0));
}
