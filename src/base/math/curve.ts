/**
 * Plane curves made of exact lines and circular arcs: length, position, tangent, flattening.
 */
import { vec2 } from "gl-matrix";
import type { Point2 } from "./point.js";

/** A straight segment. */
export interface Line {
  readonly kind: "line";
  readonly from: Point2;
  readonly to: Point2;
}

/** A circular arc from angle `start`, turning by `sweep` radians (positive is counter-clockwise). */
export interface Arc {
  readonly kind: "arc";
  readonly centre: Point2;
  /** mm, above 0. */
  readonly radius: number;
  /** Radians, of the ray from the centre to the arc's start. */
  readonly start: number;
  /** Radians, signed, never 0. */
  readonly sweep: number;
}

/** A piece of an exact outline. */
export type Segment = Line | Arc;

/** Arc length, mm. */
export function segmentLength(segment: Segment): number {
  return segment.kind === "line" ? vec2.distance(segment.from, segment.to) : segment.radius * Math.abs(segment.sweep);
}

/** The point at arc length `s` from the segment's start; beyond the ends a line goes on straight, an arc round. */
export function pointAt(segment: Segment, s: number): Point2 {
  if (segment.kind === "line") {
    const [tx, ty] = tangentAt(segment, s);
    return [segment.from[0] + tx * s, segment.from[1] + ty * s];
  }
  return onCircle(segment, angleAt(segment, s));
}

/** Unit tangent at arc length `s`, in the direction of travel. */
export function tangentAt(segment: Segment, s: number): Point2 {
  if (segment.kind === "line") {
    const length = segmentLength(segment);
    return [(segment.to[0] - segment.from[0]) / length, (segment.to[1] - segment.from[1]) / length];
  }
  const angle = angleAt(segment, s);
  const turn = Math.sign(segment.sweep);
  return [-Math.sin(angle) * turn, Math.cos(angle) * turn];
}

export function segmentStart(segment: Segment): Point2 {
  return segment.kind === "line" ? segment.from : onCircle(segment, segment.start);
}

export function segmentEnd(segment: Segment): Point2 {
  return segment.kind === "line" ? segment.to : onCircle(segment, segment.start + segment.sweep);
}

/** The box around a segment. */
export function segmentBounds(segment: Segment): { readonly min: Point2; readonly max: Point2 } {
  const points = [segmentStart(segment), segmentEnd(segment)];
  if (segment.kind === "arc") {
    const [low, high] = [segment.start, segment.start + segment.sweep].sort((a, b) => a - b);
    const quarter = Math.PI / 2;
    for (let i = Math.ceil(low / quarter); i * quarter <= high; i++) points.push(onCircle(segment, i * quarter));
  }
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { min: [Math.min(...xs), Math.min(...ys)], max: [Math.max(...xs), Math.max(...ys)] };
}

/** The same curve run the other way. */
export function reverseSegment(segment: Segment): Segment {
  return segment.kind === "line"
    ? { kind: "line", from: segment.to, to: segment.from }
    : { ...segment, start: segment.start + segment.sweep, sweep: -segment.sweep };
}

/** The middle part of a segment that is left when `fromStart` and `fromEnd` mm are taken off its ends. */
export function trimSegment(segment: Segment, fromStart: number, fromEnd: number): Segment {
  if (segment.kind === "line") {
    const from = fromStart === 0 ? segment.from : pointAt(segment, fromStart);
    const to = fromEnd === 0 ? segment.to : pointAt(segment, segmentLength(segment) - fromEnd);
    return { kind: "line", from, to };
  }
  const turn = Math.sign(segment.sweep) / segment.radius;
  return {
    ...segment,
    start: segment.start + turn * fromStart,
    sweep: segment.sweep - turn * (fromStart + fromEnd),
  };
}

/** Sagittas below this make a straight line, mm: a hundredth of a micrometre, far under any tolerance. */
const STRAIGHT_BELOW = 1e-5;

/**
 * The arc from `from` to `to` whose middle stands `sagitta` mm off the chord: to the right of the direction of travel
 * where positive, to the left where negative. Radius (c² / 4 + s²) / 2s for chord c (any handbook of geometry).
 */
export function arcBySagitta(from: Point2, to: Point2, sagitta: number): Segment {
  if (Math.abs(sagitta) < STRAIGHT_BELOW) return { kind: "line", from, to };
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const chord = Math.hypot(dx, dy);
  const radius = (chord * chord) / (8 * Math.abs(sagitta)) + Math.abs(sagitta) / 2;
  // From the chord's middle to the centre, to the left of travel for a bulge to the right.
  const rise = (chord * chord) / (8 * sagitta) - sagitta / 2;
  const centre: Point2 = [(from[0] + to[0]) / 2 - (dy / chord) * rise, (from[1] + to[1]) / 2 + (dx / chord) * rise];
  return {
    kind: "arc",
    centre,
    radius,
    start: Math.atan2(from[1] - centre[1], from[0] - centre[0]),
    sweep: 4 * Math.atan((2 * sagitta) / chord),
  };
}

/**
 * How many equal chords keep an arc within `tolerance` of its chords.
 * The sagitta of a chord over angle a is r (1 − cos(a / 2)) (any handbook of geometry).
 *
 * @param radius mm, above 0
 * @param sweep radians, its sign does not matter
 * @param tolerance mm, above 0
 */
export function chordCount(radius: number, sweep: number, tolerance: number): number {
  // acos(1 − t) as 2 asin √(t / 2), which keeps its digits where t is small.
  const half = 2 * Math.asin(Math.sqrt(Math.min(tolerance / radius, 1) / 2));
  return Math.max(1, Math.ceil(Math.abs(sweep) / (2 * half) - 1e-9));
}

/** The points of a segment after its start, up to and with its end, within `tolerance` mm of the curve. */
export function flattenSegment(segment: Segment, tolerance: number): Point2[] {
  return divideSegment(segment, segment.kind === "line" ? 1 : chordCount(segment.radius, segment.sweep, tolerance));
}

/** The points of a segment after its start, up to and with its end, that part it into so many equal arcs; of a line its end. */
export function divideSegment(segment: Segment, count: number): Point2[] {
  if (segment.kind === "line") return [segment.to];
  const points: Point2[] = [];
  for (let i = 1; i <= count; i++) points.push(onCircle(segment, segment.start + (segment.sweep * i) / count));
  return points;
}

function angleAt(arc: Arc, s: number): number {
  return arc.start + (Math.sign(arc.sweep) * s) / arc.radius;
}

function onCircle(arc: Arc, angle: number): Point2 {
  return [arc.centre[0] + arc.radius * Math.cos(angle), arc.centre[1] + arc.radius * Math.sin(angle)];
}
