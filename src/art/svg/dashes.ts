/**
 * Dashes of a stroke: the spans of a line that are painted. SVG 1.1 (Second Edition), 11.4; where a closed line's last
 * dash meets its first they are one, as in SVG 2, 13.5.6.
 */
import type { GridPath, GridPoint } from "../../flat/grid.js";

/** A line in corners. */
export interface FlatLine {
  readonly points: GridPath;
  /** At which of its points two pieces of the path meet. */
  readonly joints: ReadonlySet<number>;
  /** Which way a line of one point looks; default to the right. */
  readonly facing?: readonly [x: number, y: number];
}

/** Lengths of dashes and gaps in turn, and where in them a line begins; the line's unit. */
export interface DashPattern {
  readonly lengths: readonly number[];
  readonly offset: number;
}

/** A line and the spans of it that are painted. */
export interface DashedLine {
  readonly pieces: readonly FlatLine[];
  /** Whether the whole line is painted, so that nothing is to be cut. */
  readonly solid: boolean;
}

/** Length of a line, to its first point again where it is closed. */
export function lengthOf(points: GridPath, closed: boolean): number {
  return marksOf(points, closed).at(-1)?.at ?? 0;
}

/** Most dashes that a pattern makes of a line so long. */
export function dashCount(length: number, { lengths }: DashPattern): number {
  const whole = lengths.reduce((sum, one) => sum + one, 0);
  return (length / whole + 2) * lengths.length;
}

/** Cuts a line into its dashes. The pattern's lengths add up to more than 0. */
export function cutDashes({ points, joints }: FlatLine, closed: boolean, pattern: DashPattern): DashedLine {
  const marks = marksOf(points, closed);
  const length = marks[marks.length - 1].at;
  const spans = spansOf(length, pattern);
  if (spans.length === 1 && spans[0][0] === 0 && spans[0][1] === length) return { pieces: [], solid: true };
  let from = 0;
  const pieces = spans.map(([start, end]) => {
    while (from < marks.length - 2 && marks[from + 1].at <= start) from++;
    return pieceOf(marks, from, [start, end], joints);
  });
  const meets = closed && pieces.length > 1 && spans[0][0] === 0 && spans[spans.length - 1][1] === length;
  if (!meets) return { pieces, solid: false };
  const [first, ...others] = pieces;
  const last = others.pop() as FlatLine;
  return { pieces: [...others, joined(last, first, joints.has(0))], solid: false };
}

/** A point of the line, and how far along it lies. */
interface LineMark {
  readonly point: GridPoint;
  readonly index: number;
  readonly at: number;
}

function marksOf(points: GridPath, closed: boolean): LineMark[] {
  let at = 0;
  const ends = closed ? [...points, points[0]] : points;
  return ends.map((point, i) => {
    if (i > 0) at += Math.hypot(point.x - ends[i - 1].x, point.y - ends[i - 1].y);
    return { point, index: i % points.length, at };
  });
}

/** Where dashes begin and end along a line. */
function spansOf(length: number, { lengths, offset }: DashPattern): (readonly [number, number])[] {
  const whole = lengths.reduce((sum, one) => sum + one, 0);
  const spans: [number, number][] = [];
  let at = -(((offset % whole) + whole) % whole);
  for (let i = 0; at < length; i++) {
    const end = at + lengths[i % lengths.length];
    const painted = i % 2 === 0 && (end > 0 || (end === 0 && at === 0));
    const last = spans[spans.length - 1];
    // A gap of no length parts nothing.
    if (painted && last !== undefined && last[1] === at) last[1] = Math.min(end, length);
    else if (painted) spans.push([Math.max(at, 0), Math.min(end, length)]);
    at = end;
  }
  return spans;
}

function pieceOf(
  marks: readonly LineMark[],
  from: number,
  [start, end]: readonly [number, number],
  joints: ReadonlySet<number>,
): FlatLine {
  const first = pointAt(marks, from, start);
  const points: GridPath = [first];
  const inner = new Set<number>();
  let i = from + 1;
  for (; i < marks.length - 1 && marks[i].at < end; i++) {
    if (marks[i].at <= start || same(marks[i].point, points[points.length - 1])) continue;
    if (joints.has(marks[i].index)) inner.add(points.length);
    points.push(marks[i].point);
  }
  const last = pointAt(marks, i - 1, end);
  if (!same(last, points[points.length - 1])) points.push(last);
  const [a, b] = [marks[from].point, marks[from + 1].point];
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  return { points, joints: inner, facing: long > 0 ? [(b.x - a.x) / long, (b.y - a.y) / long] : [1, 0] };
}

/** The point so far along, on the side that begins at a mark. */
function pointAt(marks: readonly LineMark[], from: number, at: number): GridPoint {
  const [a, b] = [marks[from], marks[from + 1]];
  const share = b.at > a.at ? Math.min(1, Math.max(0, (at - a.at) / (b.at - a.at))) : 0;
  return {
    x: Math.round(a.point.x + share * (b.point.x - a.point.x)),
    y: Math.round(a.point.y + share * (b.point.y - a.point.y)),
  };
}

function same(a: GridPoint, b: GridPoint): boolean {
  return a.x === b.x && a.y === b.y;
}

/** Two dashes that meet at the line's beginning. */
function joined(before: FlatLine, after: FlatLine, atJoint: boolean): FlatLine {
  const shift = before.points.length - 1;
  const joints = new Set([...before.joints, ...[...after.joints].map((joint) => joint + shift)]);
  if (atJoint) joints.add(shift);
  return { points: [...before.points, ...after.points.slice(1)], joints, facing: after.facing };
}
