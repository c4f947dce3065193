/**
 * The line of a surface at one angle: a chain of exact lines and arcs, measured along its arc length from its middle.
 */
import { pointAt, type Segment, segmentEnd, segmentLength, segmentStart, tangentAt } from "../../base/math/curve.js";
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import type { SurfaceLine } from "./surface.js";

/** One curve of a line. */
export interface LinePiece {
  readonly segment: Segment;
  /** Arc length at the piece's start, mm. */
  readonly start: number;
  readonly length: number;
}

/** The curves one after the other, by arc length. */
export function layPieces(line: readonly Segment[]): LinePiece[] {
  let start = 0;
  return line.map((segment) => {
    const piece = { segment, start, length: segmentLength(segment) };
    start += piece.length;
    return piece;
  });
}

/** The line of a chain of curves; v is true to its arc length. */
export function makeLine(chain: readonly Segment[]): SurfaceLine {
  const pieces = layPieces(chain);
  const length = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const locate = (v: number) => {
    const s = v + length / 2;
    const index = pieces.findIndex((piece) => s <= piece.start + piece.length);
    const piece = pieces[index === -1 ? pieces.length - 1 : index];
    const inside = Math.min(Math.max(s - piece.start, 0), piece.length);
    return { piece, inside, beyond: s - piece.start - inside };
  };
  return {
    length,
    reach: length / 2,
    inFrom: (side, inset) => (side === "start" ? -(length / 2 - inset) : length / 2 - inset),
    point: (v, h) => {
      const { piece, inside, beyond } = locate(v);
      const [w, r] = pointAt(piece.segment, inside);
      const [tw, tr] = tangentAt(piece.segment, inside);
      return [w + beyond * tw - h * tr, r + beyond * tr + h * tw];
    },
    normal: (v) => {
      const { piece, inside } = locate(v);
      const [tw, tr] = tangentAt(piece.segment, inside);
      return [-tr, tw];
    },
    hollowAt: (v) => {
      const { piece, beyond } = locate(v);
      return beyond === 0 ? hollowOf(piece.segment) : Number.POSITIVE_INFINITY;
    },
    inverse: (w, r) => {
      const [s, h] = nearestOnLine(pieces, [w, r]);
      return [s - length / 2, h];
    },
  };
}

/** The radius of a curve whose middle lies on its left, as its normal does; else infinite. */
export function hollowOf(segment: Segment): number {
  return segment.kind !== "line" && segment.sweep > 0 ? segment.radius : Number.POSITIVE_INFINITY;
}

/** Arc length and signed height of a section point over the nearest place of the line (or of its straight ends). */
export function nearestOnLine(pieces: readonly LinePiece[], point: Point2): [s: number, h: number] {
  let best: [number, number] = [0, Number.POSITIVE_INFINITY];
  pieces.forEach((piece, i) => {
    const ends = { first: i === 0, last: i === pieces.length - 1 };
    for (const [s, h] of candidates(piece, point, ends))
      if (Math.abs(h) < Math.abs(best[1])) best = [piece.start + s, h];
  });
  return best;
}

/** Feet of the perpendicular on a piece, within it or on its straight continuation at the line's ends. */
function candidates(
  { segment, length }: LinePiece,
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
