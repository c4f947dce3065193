/**
 * Smooth curves as circular arcs that join without a corner.
 *
 * Two arcs, tangent to each other and to a direction at either end: K. M. Bolton, "Biarc curves" (1975), cited from
 * memory. Of the one family of such pairs that joins two ends, this takes the pair whose chords are equal: with the end
 * tangents at angles a and c to the whole chord, the joint is the apex of the isosceles triangle with base angles
 * (a − c) / 4, and no case is singular.
 *
 * The bound: a piece whose tangents all lie within 45° of its chord, and whose pair's do, is passed by the pair's normals
 * in order. Its signed distance to the pair has a second derivative of at most n·c″ + c′² / ρ, ρ being its distance from
 * the arc's centre; so between samples 1/n of the parameter apart it strays at most that / (8 n²) from what they show.
 * The feet of the normals move from one end to the other without a gap: the pair is as near to the piece as it to the pair.
 */
import { AnnuletError } from "../errors.js";
import { type Segment, segmentEnd, segmentLength, tangentAt } from "./curve.js";
import type { Point2 } from "./point.js";
import type { SmoothPiece } from "./smooth-piece.js";

export interface BiarcFit {
  /** Largest distance between the curve and its arcs, both ways, mm, above 0. */
  readonly tolerance: number;
  /** Unit tangents to take at the two ends. Default: the curve's own. */
  readonly tangents?: readonly [Point2, Point2];
  /**
   * The same curve under other maps: it is halved where one of them would be too, at half the tolerance, so that maps
   * between these take the same pieces. Default none.
   */
  readonly alike?: readonly SmoothPiece[];
  /** Where the curve stands in the document, for errors. */
  readonly path?: string;
}

/** A turn of less than this is none, radians: radii are then 1e8 chords, and rounding moves an arc's end by 1e-8 of it. */
const STRAIGHT_TURN = 1e-8;

/** The tangents of a pair at its ends are opposite to its chord to this, radians, where one arc will do: rounding. */
const ONE_ARC = 1e-13;

/** Largest angle between a piece's chord and its tangents, radians. */
const CONE = Math.PI / 4;

/** Samples a piece is measured at. */
const SAMPLES = 16;

/** Where a curve turns by more than the cone allows within this part of the tolerance, it has a corner. Chosen. */
const SPECK = 1 / 16;

/** Most halvings of one curve: hundreds of times what a ring takes at 1e-6 mm. Chosen. */
const MOST_HALVINGS = 10_000;

/**
 * One or two segments from `from` to `to` that begin and end with the given unit tangents, without a corner between.
 * The ends must differ and the tangents lie within less than a right angle of the direction between them.
 */
export function biarc(from: Point2, startTangent: Point2, to: Point2, endTangent: Point2): Segment[] {
  const chord: Point2 = [to[0] - from[0], to[1] - from[1]];
  const a = angleBetween(chord, startTangent);
  const c = angleBetween(chord, endTangent);
  if (Math.abs(a + c) <= ONE_ARC || Math.max(Math.abs(3 * a + c), Math.abs(a + 3 * c)) / 2 < STRAIGHT_TURN) {
    return [turningSegment(from, to, startTangent, -2 * a)];
  }
  const rise = Math.tan((a - c) / 4) / 2;
  const joint: Point2 = [(from[0] + to[0]) / 2 - rise * chord[1], (from[1] + to[1]) / 2 + rise * chord[0]];
  // From a over −(a + c) / 2 at the joint to c.
  const first = turningSegment(from, joint, startTangent, -(3 * a + c) / 2);
  return [first, turningSegment(joint, to, turned(startTangent, -(3 * a + c) / 2), (a + 3 * c) / 2)];
}

/**
 * The curve as lines and arcs within the tolerance, without a corner but where the curve itself has one (a cusp).
 *
 * @throws AnnuletError `path-too-fine` where that takes more than 10 000 halvings
 */
export function fitBiarcs(curve: SmoothPiece, fit: BiarcFit): Segment[] {
  const { tolerance, tangents = curve.tangents, alike = [] } = fit;
  const found: Segment[] = [];
  const waiting: Waiting[] = [{ piece: curve, tangents, alike }];
  let halvings = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { piece, tangents, alike } = next;
    const pair = fitOne(piece, tangents, tolerance);
    if (pair !== undefined && alike.every((one) => fitOne(one, one.tangents, tolerance / 2) !== undefined)) {
      found.push(...pair);
      continue;
    }
    // Written so that a count of no end is refused for numbers too large for arithmetic as well.
    if (++halvings > MOST_HALVINGS) throw tooFine(fit);
    const [first, second] = piece.halves();
    const halves = alike.map((one) => one.halves());
    const [before, after] = [first.tangents[1], second.tangents[0]];
    const isCusp = !(before[0] * after[0] + before[1] * after[1] > 0);
    waiting.push({ piece: second, tangents: [isCusp ? after : before, tangents[1]], alike: halves.map(([, b]) => b) });
    waiting.push({ piece: first, tangents: [tangents[0], before], alike: halves.map(([a]) => a) });
  }
  return found;
}

interface Waiting {
  readonly piece: SmoothPiece;
  readonly tangents: readonly [Point2, Point2];
  readonly alike: readonly SmoothPiece[];
}

/** The pair of arcs for a piece, or undefined where it must be halved. */
function fitOne(piece: SmoothPiece, tangents: readonly [Point2, Point2], tolerance: number): Segment[] | undefined {
  const { start, end } = piece;
  const chord: Point2 = [end[0] - start[0], end[1] - start[1]];
  const length = Math.hypot(...chord);
  const isSpeck = piece.reach <= SPECK * tolerance;
  if (isSpeck && length === 0) return [];
  const angles = [...tangents, ...piece.directions].map((direction) => angleBetween(chord, direction));
  if (length === 0 || !angles.every((angle) => Math.abs(angle) <= CONE)) {
    return isSpeck ? [{ kind: "line", from: start, to: end }] : undefined;
  }
  const pair = biarc(start, tangents[0], end, tangents[1]);
  if (isSpeck) return pair;
  const [a, c] = angles;
  return bendsOneWay(a, c) && isWithin(piece, pair, Math.max(Math.abs(a), Math.abs(c)), tolerance) ? pair : undefined;
}

/** An angle less than this part of the other is beside an inflection. */
const BESIDE_INFLECTION = 1e-6;

/** Whether the two arcs turn the same way where the tangents lie on both sides of the chord. */
function bendsOneWay(a: number, c: number): boolean {
  const [less, more] = [Math.min(Math.abs(a), Math.abs(c)), Math.max(Math.abs(a), Math.abs(c))];
  return a * c >= 0 || less * 3 >= more || less < BESIDE_INFLECTION * more;
}

/** Whether no point of the piece is further from the pair than the tolerance, and none of the pair from the piece. */
function isWithin(piece: SmoothPiece, pair: readonly Segment[], widest: number, tolerance: number): boolean {
  const radius = Math.min(...pair.map((one) => (one.kind === "arc" ? one.radius : Number.POSITIVE_INFINITY)));
  // Up to half the radius from the arc the distance is smooth: a quarter for the samples, a quarter between them.
  const least = Math.min(tolerance, radius / 4);
  if (piece.speed / (2 * SAMPLES) > radius / 4) return false;
  const { start, end } = piece;
  const length = Math.hypot(end[0] - start[0], end[1] - start[1]);
  const along: Point2 = [(end[0] - start[0]) / length, (end[1] - start[1]) / length];
  const normalBend = piece.bend([-along[1], along[0]]) + piece.bend(along) * Math.sin(widest);
  const between = (normalBend + (2 * piece.speed * piece.speed) / radius) / (8 * SAMPLES * SAMPLES);
  if (!(between <= least)) return false;
  const [first, second] = pair;
  const joint = segmentEnd(first);
  const [tx, ty] = tangentAt(first, segmentLength(first));
  for (let i = 1; i < SAMPLES; i++) {
    const point = piece.pointAt(i / SAMPLES);
    const isPast = second !== undefined && (point[0] - joint[0]) * tx + (point[1] - joint[1]) * ty > 0;
    if (!(distanceTo(isPast ? second : first, point) + between <= least)) return false;
  }
  return true;
}

/** Distance to the whole line or circle of a segment. */
function distanceTo(segment: Segment, [x, y]: Point2): number {
  if (segment.kind === "arc") {
    const [dx, dy] = [x - segment.centre[0], y - segment.centre[1]];
    return Math.abs(Math.sqrt(dx * dx + dy * dy) - segment.radius);
  }
  const [tx, ty] = tangentAt(segment, 0);
  return Math.abs((x - segment.from[0]) * ty - (y - segment.from[1]) * tx);
}

/** The arc from one point to another that begins along a tangent and turns by `turn`; a line where it does not turn. */
function turningSegment(from: Point2, to: Point2, [tx, ty]: Point2, turn: number): Segment {
  if (Math.abs(turn) < STRAIGHT_TURN) return { kind: "line", from, to };
  const side = Math.sign(turn);
  const radius = Math.hypot(to[0] - from[0], to[1] - from[1]) / (2 * Math.sin(Math.abs(turn) / 2));
  return {
    kind: "arc",
    centre: [from[0] - ty * side * radius, from[1] + tx * side * radius],
    radius,
    start: Math.atan2(-tx * side, ty * side),
    sweep: turn,
  };
}

function angleBetween([ax, ay]: Point2, [bx, by]: Point2): number {
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

function turned([x, y]: Point2, angle: number): Point2 {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos * x - sin * y, sin * x + cos * y];
}

function tooFine({ tolerance, path }: BiarcFit): AnnuletError {
  return new AnnuletError({
    code: "path-too-fine",
    message: `a piece of the path would take more than ${MOST_HALVINGS} arcs to stay within ${tolerance} of its curve`,
    path,
    value: tolerance,
    allowed: `at most ${MOST_HALVINGS} arcs a piece`,
    hint: "draw it smaller, or allow a larger tolerance",
  });
}
