/**
 * The wrap map between the flat pattern and the band, and its inverse.
 *
 *     forward(u, v, h):  θ = θ0 + u / R,   (w, r) = seat(v) + h · normal(v),   x = r cos θ, y = r sin θ, z = w
 *
 * u runs along the circumference (mm at the reference radius R), v across the band (arc length along the seat, 0 at
 * its middle, + towards +z), h along the seat's outward normal. Beyond its ends the seat goes on straight.
 */
import { AnnuletError } from "../../base/errors.js";
import { pointAt, type Segment, segmentEnd, segmentLength, segmentStart, tangentAt } from "../../base/math/curve.js";
import type { Point2, Point3 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";

/** A pure pair: `inverse(forward(p))` is p for every point within the relief's reach of the seat. */
export interface Wrap {
  /** R, mm. */
  readonly referenceRadius: number;
  /** θ0, radians: where u = 0 lies, counter-clockwise from +x seen from +z. */
  readonly startAngle: number;
  /** Length of the seat, mm; v runs over ± half of it. */
  readonly seatLength: number;
  readonly forward: (u: number, v: number, h: number) => Point3;
  readonly inverse: (x: number, y: number, z: number) => Point3;
  /** The section point (w, r) at v and h. */
  readonly section: (v: number, h: number) => Point2;
  /** Outward unit normal of the seat in (w, r). */
  readonly normal: (v: number) => Point2;
}

export interface WrapOptions {
  /** The seat's exact curve in (w, r), from low w to high w. */
  readonly seat: readonly Segment[];
  /** mm, above 0. */
  readonly referenceRadius: number;
  /** Radians. */
  readonly startAngle: number;
}

/** A corner of the seat turns by more than this, radians; less is rounding of the tangent fillets. */
const CORNER = 1e-6;

/** The wrap map of a seat. */
export function makeWrap({ seat, referenceRadius, startAngle }: WrapOptions): Wrap {
  const pieces = layOut(seat);
  const seatLength = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const locate = (v: number) => {
    const s = v + seatLength / 2;
    const index = pieces.findIndex((piece) => s <= piece.start + piece.length);
    const piece = pieces[index === -1 ? pieces.length - 1 : index];
    const inside = Math.min(Math.max(s - piece.start, 0), piece.length);
    return { piece, inside, beyond: s - piece.start - inside };
  };
  const normal = (v: number): Point2 => {
    const { piece, inside } = locate(v);
    const [tw, tr] = tangentAt(piece.segment, inside);
    return [-tr, tw];
  };
  const section = (v: number, h: number): Point2 => {
    const { piece, inside, beyond } = locate(v);
    const [w, r] = pointAt(piece.segment, inside);
    const [tw, tr] = tangentAt(piece.segment, inside);
    return [w + beyond * tw - h * tr, r + beyond * tr + h * tw];
  };
  const forward = (u: number, v: number, h: number): Point3 => {
    const [w, r] = section(v, h);
    const angle = startAngle + u / referenceRadius;
    return [r * Math.cos(angle), r * Math.sin(angle), w];
  };
  const inverse = (x: number, y: number, z: number): Point3 => {
    const turned = (Math.atan2(y, x) - startAngle) % TURN;
    const [v, h] = nearestOnSeat(pieces, [z, Math.hypot(x, y)]);
    return [(turned < 0 ? turned + TURN : turned) * referenceRadius, v - seatLength / 2, h];
  };
  return { referenceRadius, startAngle, seatLength, forward, inverse, section, normal };
}

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

/** v of the places where the seat changes from one curve to the next or its flattening has a vertex, mm. */
export function seatStations(seat: readonly Segment[], flatten: (segment: Segment) => number): number[] {
  const pieces = layOut(seat);
  const half = pieces.reduce((sum, piece) => sum + piece.length, 0) / 2;
  return pieces.flatMap(({ segment, start, length }, i) => {
    const count = flatten(segment);
    const first = i === 0 ? 1 : 0;
    return Array.from({ length: count - first }, (_, k) => start + (length * (k + first)) / count - half);
  });
}

interface Piece {
  readonly segment: Segment;
  /** Arc length at the piece's start, mm. */
  readonly start: number;
  readonly length: number;
}

function layOut(seat: readonly Segment[]): Piece[] {
  let start = 0;
  return seat.map((segment) => {
    const piece = { segment, start, length: segmentLength(segment) };
    start += piece.length;
    return piece;
  });
}

/** Arc length and signed height of a section point over the nearest place of the seat (or of its straight ends). */
function nearestOnSeat(pieces: readonly Piece[], point: Point2): [s: number, h: number] {
  let best: [number, number] = [0, Number.POSITIVE_INFINITY];
  pieces.forEach((piece, i) => {
    const ends = { first: i === 0, last: i === pieces.length - 1 };
    for (const [s, h] of candidates(piece, point, ends))
      if (Math.abs(h) < Math.abs(best[1])) best = [piece.start + s, h];
  });
  return best;
}

/** Feet of the perpendicular on a piece, within it or on its straight continuation at the seat's ends. */
function candidates(
  { segment, length }: Piece,
  point: Point2,
  ends: { readonly first: boolean; readonly last: boolean },
): [number, number][] {
  const found: [number, number][] = [];
  if (segment.kind === "line") {
    const [s, h] = project(point, segmentStart(segment), tangentAt(segment, 0));
    if ((s >= 0 || ends.first) && (s <= length || ends.last)) found.push([s, h]);
    return found;
  }
  const [dx, dy] = [point[0] - segment.centre[0], point[1] - segment.centre[1]];
  const turn = Math.sign(segment.sweep);
  const angle = turn * (Math.atan2(dy, dx) - segment.start);
  const s = segment.radius * wrapTurn(angle, Math.abs(segment.sweep) / 2);
  if (s >= -ARC_SLACK && s <= length + ARC_SLACK) found.push([s, turn * (segment.radius - Math.hypot(dx, dy))]);
  if (ends.first) {
    const [t, h] = project(point, segmentStart(segment), tangentAt(segment, 0));
    if (t < 0) found.push([t, h]);
  }
  if (ends.last) {
    const [t, h] = project(point, segmentEnd(segment), tangentAt(segment, length));
    if (t > 0) found.push([length + t, h]);
  }
  return found;
}

/** Rounding let pass at the ends of an arc, mm. */
const ARC_SLACK = 1e-9;

/** The angle turned by whole turns to lie within half a turn of `middle`. */
function wrapTurn(angle: number, middle: number): number {
  return angle - TURN * Math.round((angle - middle) / TURN);
}

function project(point: Point2, origin: Point2, [tx, ty]: Point2): [along: number, left: number] {
  const [dx, dy] = [point[0] - origin[0], point[1] - origin[1]];
  return [dx * tx + dy * ty, tx * dy - ty * dx];
}
