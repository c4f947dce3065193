/**
 * The fillet of a corner: an arc of given radius tangent to both of the lines or arcs that meet there.
 *
 * Its centre is where the two curves, moved by the radius towards the corner's inner side, meet; its ends are that
 * centre's projections on the curves. Classical construction.
 */
import { TURN } from "../units.js";
import { type Arc, type Segment, segmentLength, tangentAt } from "./curve.js";
import { type Carrier, intersect } from "./intersect.js";
import type { Point2 } from "./point.js";

/** A fillet and what it takes off its neighbours. */
export interface Fillet {
  readonly arc: Arc;
  /** mm off the end of the first segment. */
  readonly trimFirst: number;
  /** mm off the start of the second segment. */
  readonly trimSecond: number;
}

/** Sine of the turn below which a joint counts as smooth already, radians. */
export const SMOOTH_TURN = 1e-9;

/** How far a tangent point may lie outside its segment and still count as on its end, mm: rounding. */
export const ON_SEGMENT = 1e-9;

/** Radians by which the path turns where `first` ends and `second` begins; positive is to the left. */
export function turnBetween(first: Segment, second: Segment): number {
  const [ax, ay] = tangentAt(first, segmentLength(first));
  const [bx, by] = tangentAt(second, 0);
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/**
 * The fillet of radius `radius` mm that leads from one segment to another; usually the second begins where the first ends.
 * Undefined where none fits inside the two segments; joints that are smooth or turn right back have none either.
 *
 * @param side 1 for a turn to the left, −1 to the right. Default: as the two segments turn.
 */
export function filletBetween(
  first: Segment,
  second: Segment,
  radius: number,
  side = Math.sign(turnBetween(first, second)),
): Fillet | undefined {
  if (Math.abs(Math.sin(turnBetween(first, second))) < SMOOTH_TURN) return undefined;
  const shift = side * radius;
  const [a, b] = [offset(first, shift), offset(second, shift)];
  if (a === undefined || b === undefined) return undefined;
  let best: Fillet | undefined;
  for (const guess of intersect(a, b)) {
    const centre = polish(guess, a, b);
    const trimFirst = segmentLength(first) - project(first, centre);
    const trimSecond = project(second, centre);
    if (!isWithin(trimFirst, first) || !isWithin(trimSecond, second)) continue;
    if (best !== undefined && best.trimFirst + best.trimSecond <= trimFirst + trimSecond) continue;
    const start = angleOfTangentPoint(first, centre, shift);
    const end = angleOfTangentPoint(second, centre, shift);
    const open = side * (end - start);
    const sweep = side * (open - TURN * Math.floor(open / TURN));
    best = { arc: { kind: "arc", centre, radius, start, sweep }, trimFirst, trimSecond };
  }
  return best;
}

function isWithin(trim: number, segment: Segment): boolean {
  return trim >= -ON_SEGMENT && trim <= segmentLength(segment) + ON_SEGMENT;
}

/** The whole line or circle a segment lies on, moved to its left by `shift`; undefined where a circle would vanish. */
function offset(segment: Segment, shift: number): Carrier | undefined {
  if (segment.kind === "line") {
    const direction = tangentAt(segment, 0);
    const { from } = segment;
    return { kind: "line", at: [from[0] - direction[1] * shift, from[1] + direction[0] * shift], direction };
  }
  const radius = segment.radius - Math.sign(segment.sweep) * shift;
  return radius > 0 ? { kind: "circle", centre: segment.centre, radius } : undefined;
}

/** Two Newton steps on the distances to both carriers: circles of a very large radius lose digits in a square root. */
function polish(guess: Point2, a: Carrier, b: Carrier): Point2 {
  let [x, y] = guess;
  for (let i = 0; i < 2; i++) {
    const [da, ax, ay] = distance(a, x, y);
    const [db, bx, by] = distance(b, x, y);
    const determinant = ax * by - ay * bx;
    if (Math.abs(determinant) < SMOOTH_TURN) break;
    x -= (da * by - db * ay) / determinant;
    y -= (db * ax - da * bx) / determinant;
  }
  return [x, y];
}

/** Signed distance to a carrier, and its gradient. */
function distance(carrier: Carrier, x: number, y: number): readonly [number, number, number] {
  if (carrier.kind === "line") {
    const [nx, ny] = [-carrier.direction[1], carrier.direction[0]];
    return [(x - carrier.at[0]) * nx + (y - carrier.at[1]) * ny, nx, ny];
  }
  const [dx, dy] = [x - carrier.centre[0], y - carrier.centre[1]];
  const length = Math.hypot(dx, dy);
  return [length - carrier.radius, dx / length, dy / length];
}

/** Arc length from the segment's start to the point nearest to `p` on its line or circle; just before the start is negative. */
function project(segment: Segment, p: Point2): number {
  if (segment.kind === "line") {
    const [tx, ty] = tangentAt(segment, 0);
    return (p[0] - segment.from[0]) * tx + (p[1] - segment.from[1]) * ty;
  }
  const middle = segment.start + segment.sweep / 2;
  const angle = Math.atan2(p[1] - segment.centre[1], p[0] - segment.centre[0]);
  const fromMiddle = wrap(angle - middle);
  return segment.radius * (Math.abs(segment.sweep) / 2 + Math.sign(segment.sweep) * fromMiddle);
}

/** An angle brought between −π and π. */
function wrap(angle: number): number {
  return angle - TURN * Math.round(angle / TURN);
}

/** Angle, seen from the fillet's centre, of the point where it touches the segment. */
function angleOfTangentPoint(segment: Segment, centre: Point2, shift: number): number {
  if (segment.kind === "line") {
    const [tx, ty] = tangentAt(segment, 0);
    return Math.atan2(-tx * shift, ty * shift);
  }
  const inside = Math.sign(segment.sweep) * shift > 0 ? 1 : -1;
  return Math.atan2(inside * (centre[1] - segment.centre[1]), inside * (centre[0] - segment.centre[0]));
}
