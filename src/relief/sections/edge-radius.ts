/**
 * The edge between a wall and the curve or flank that rises from it, rounded by an arc tangent to both.
 */
import {
  flattenSegment,
  type Line,
  type Segment,
  segmentEnd,
  segmentLength,
  segmentStart,
  trimSegment,
} from "../../base/math/curve.js";
import { filletBetween } from "../../base/math/fillet.js";
import { largestWhere } from "../../base/math/largest.js";
import type { Point2 } from "../../base/math/point.js";
import { showLength } from "../../base/units.js";
import { misfit, type SectionFrame, type SectionLine } from "./section-form.js";
import { foot } from "./wall.js";

export interface RoundedEdge {
  /** mm */
  readonly wall: number;
  /** Degrees. */
  readonly draft: number;
  /** mm, above 0. */
  readonly radius: number;
}

/**
 * The section's line with its edge rounded.
 *
 * @param rise what begins at the wall's upper end (0, wall), smooth in itself
 * @throws AnnuletError `section-misfit` with the largest radius that fits
 */
export function roundEdge(
  { wall, draft, radius }: RoundedEdge,
  rise: readonly Segment[],
  frame: SectionFrame,
): SectionLine {
  const [first, ...rest] = rise;
  const [base = [0, 0]] = foot(wall, draft);
  const side: Line = { kind: "line", from: base, to: [0, wall] };
  const fitted = (value: number) => (wall > 0 ? filletBetween(side, first, value) : undefined);
  const fillet = fitted(radius);
  if (fillet === undefined) {
    const largest = largestWhere(0, radius, (value) => value === 0 || fitted(value) !== undefined);
    throw misfit(frame, "radius", {
      message: `an edge rounded by ${showLength(radius)} does not fit between a wall of ${showLength(wall)} and what rises from it`,
      value: radius,
      allowed: `0 to ${showLength(Math.floor(largest * 1000) / 1000)}`,
      hint:
        wall > 0 ? "make it smaller, or the wall higher" : "give the section a wall: without one there is no such edge",
    });
  }
  const { arc, trimSecond } = fillet;
  const above = trimSegment(first, trimSecond, 0);
  const points: Point2[] = [segmentStart(arc), ...flattenSegment(arc, frame.tolerance)];
  for (const segment of segmentLength(above) > NOTHING ? [above, ...rest] : rest) {
    points.push(...flattenSegment(segment, frame.tolerance));
  }
  const top = segmentEnd(rise[rise.length - 1]);
  points[points.length - 1] = top;
  const line = draft > 0 ? [base, ...points] : points;
  return line.filter(([d], i) => i === 0 || d > line[i - 1][0] + NOTHING);
}

/** Shorter spans are none, mm: far below the grid on which contours are worked. */
const NOTHING = 1e-9;
