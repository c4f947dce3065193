/**
 * Cubics and elliptic arcs, stretched along the axes, as smooth pieces that can be halved and whose derivatives are
 * bounded: what fitting other curves to them needs.
 *
 * A Bézier curve's derivatives lie in the hulls of its control points' differences; an ellipse stretched along any axes
 * is centre + u cos a + v sin a with conjugate half diameters u and v (both: any handbook of geometry).
 */
import type { Cubic } from "./bezier.js";
import type { Arc } from "./curve.js";
import type { EllipticArc } from "./elliptic-arc.js";
import type { Point2 } from "./point.js";

/** A curve with a parameter t from 0 to 1. */
export interface SmoothPiece {
  readonly start: Point2;
  readonly end: Point2;
  /** Unit tangents at start and end, in the direction of travel. */
  readonly tangents: readonly [Point2, Point2];
  /** No two points of the piece are further apart, mm. */
  readonly reach: number;
  /** If these lie within less than a right angle of some direction, so does every derivative. */
  readonly directions: readonly Point2[];
  /** Largest length of the derivative, mm. */
  readonly speed: number;
  /** Largest part of the second derivative along a unit vector, mm. */
  readonly bend: (along: Point2) => number;
  readonly pointAt: (t: number) => Point2;
  readonly halves: () => readonly [SmoothPiece, SmoothPiece];
}

/** The map (x, y) → (x · scale + shift of x, y · scale + shift of y). */
export interface AxisMap {
  /** Above 0. */
  readonly scale: Point2;
  /** mm */
  readonly shift: Point2;
}

/** The image of a curve under an axis map. */
export function smoothPiece(curve: Arc | Cubic | EllipticArc, { scale, shift }: AxisMap): SmoothPiece {
  const place = ([x, y]: Point2): Point2 => [x * scale[0] + shift[0], y * scale[1] + shift[1]];
  if (curve.kind === "cubic") {
    const [a, b, c, d] = curve.points;
    return cubicPiece([place(a), place(b), place(c), place(d)]);
  }
  const [rx, ry] = curve.kind === "arc" ? [curve.radius, curve.radius] : curve.radii;
  const turn = curve.kind === "arc" ? 0 : curve.turn;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return ellipsePiece({
    centre: place(curve.centre),
    u: [rx * cos * scale[0], rx * sin * scale[1]],
    v: [-ry * sin * scale[0], ry * cos * scale[1]],
    start: curve.start,
    sweep: curve.sweep,
  });
}

/** Control points nearer than this part of the piece's reach are one: rounding. */
const SAME_CONTROL = 1e-9;

function cubicPiece(points: Cubic["points"]): SmoothPiece {
  const [a, b, c, d] = points;
  const legs = [minus(b, a), minus(c, b), minus(d, c)];
  const reach = legs.reduce((sum, leg) => sum + Math.hypot(...leg), 0);
  const isLong = (leg: Point2) => Math.hypot(...leg) > SAME_CONTROL * reach;
  const bends = [minus(legs[1], legs[0]), minus(legs[2], legs[1])];
  return {
    start: a,
    end: d,
    tangents: [
      unit([legs[0], minus(c, a), minus(d, a)].find(isLong) ?? legs[0]),
      unit([legs[2], minus(d, b), minus(d, a)].find(isLong) ?? legs[2]),
    ],
    reach,
    directions: legs.filter(isLong),
    speed: 3 * Math.max(...legs.map((leg) => Math.hypot(...leg))),
    bend: (along) => 6 * Math.max(...bends.map((one) => Math.abs(dot(one, along)))),
    pointAt: (t) => {
      const s = 1 - t;
      const [wa, wb, wc, wd] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
      return [wa * a[0] + wb * b[0] + wc * c[0] + wd * d[0], wa * a[1] + wb * b[1] + wc * c[1] + wd * d[1]];
    },
    halves: () => {
      const [ab, bc, cd] = [middle(a, b), middle(b, c), middle(c, d)];
      const [abc, bcd] = [middle(ab, bc), middle(bc, cd)];
      const centre = middle(abc, bcd);
      return [cubicPiece([a, ab, abc, centre]), cubicPiece([centre, bcd, cd, d])];
    },
  };
}

interface Ellipse {
  readonly centre: Point2;
  /** Conjugate half diameters. */
  readonly u: Point2;
  readonly v: Point2;
  /** Radians of the parameter angle. */
  readonly start: number;
  readonly sweep: number;
}

function ellipsePiece(ellipse: Ellipse): SmoothPiece {
  const { centre, u, v, start, sweep } = ellipse;
  const mix = (cos: number, sin: number): Point2 => [cos * u[0] + sin * v[0], cos * u[1] + sin * v[1]];
  const pointAt = (t: number): Point2 => {
    const angle = start + t * sweep;
    const [x, y] = mix(Math.cos(angle), Math.sin(angle));
    return [centre[0] + x, centre[1] + y];
  };
  const derivativeAt = (t: number): Point2 => {
    const angle = start + t * sweep;
    return mix(-Math.sin(angle) * sweep, Math.cos(angle) * sweep);
  };
  const directions = [derivativeAt(0), derivativeAt(0.5), derivativeAt(1)];
  // The longer half axis is the larger singular value of the matrix (u v).
  const squares = dot(u, u) + dot(v, v);
  const area = 2 * Math.abs(u[0] * v[1] - u[1] * v[0]);
  const longest = (Math.sqrt(squares + area) + Math.sqrt(Math.max(squares - area, 0))) / 2;
  const speed = Math.abs(sweep) * longest;
  return {
    start: pointAt(0),
    end: pointAt(1),
    tangents: [unit(directions[0]), unit(directions[2])],
    reach: speed,
    directions,
    speed,
    bend: (along) => sweep * sweep * Math.hypot(dot(u, along), dot(v, along)),
    pointAt,
    halves: () => [
      ellipsePiece({ ...ellipse, sweep: sweep / 2 }),
      ellipsePiece({ ...ellipse, start: start + sweep / 2, sweep: sweep / 2 }),
    ],
  };
}

function minus(a: Point2, b: Point2): Point2 {
  return [a[0] - b[0], a[1] - b[1]];
}

function middle(a: Point2, b: Point2): Point2 {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function dot(a: Point2, b: Point2): number {
  return a[0] * b[0] + a[1] * b[1];
}

function unit(a: Point2): Point2 {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length];
}
