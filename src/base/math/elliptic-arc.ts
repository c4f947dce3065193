/**
 * Elliptic arcs: from SVG's end points to centre and angles, and flattening.
 *
 * SVG 1.1 (Second Edition), appendix F.6: F.6.5 for the conversion, F.6.6 for radii that are too small.
 */
import { TURN } from "../units.js";
import type { Arc } from "./curve.js";
import type { Point2 } from "./point.js";

/** A span of an ellipse, by the parameter angle: the point at angle a is centre + turned (rx cos a, ry sin a). */
export interface EllipticArc {
  readonly kind: "ellipse";
  readonly centre: Point2;
  /** Both above 0. */
  readonly radii: Point2;
  /** Radians from the x axis to the ellipse's first axis. */
  readonly turn: number;
  /** Radians. */
  readonly start: number;
  /** Radians, signed, never 0; positive is counter-clockwise with y up. */
  readonly sweep: number;
}

/** What SVG's A command says. */
export interface EndpointArc {
  readonly from: Point2;
  readonly to: Point2;
  readonly radii: Point2;
  /** Radians. */
  readonly turn: number;
  readonly large: boolean;
  /** Towards growing angles. */
  readonly positive: boolean;
}

/**
 * How near to 1 the squared ratio of half chord to radius counts as a half turn: its square root places the centre,
 * so that without this a half circle's centre would be off by the root of the rounding error, about 1e-8 radii.
 */
const HALF_TURN_SLACK = 1e-12;

/** Radii whose ratio is nearer to 1 than this make a circle; double precision after a few operations. */
const CIRCLE_SLACK = 1e-12;

/** The arc with its centre; a circular one as an exact `Arc`. The end points must differ and the radii be above 0. */
export function arcFromEndpoints({ from, to, radii, turn, large, positive }: EndpointArc): Arc | EllipticArc {
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const halfX = (from[0] - to[0]) / 2;
  const halfY = (from[1] - to[1]) / 2;
  // In the ellipse's own frame, scaled to the unit circle: half the chord.
  const chordX = (cos * halfX + sin * halfY) / radii[0];
  const chordY = (-sin * halfX + cos * halfY) / radii[1];
  const ratio = chordX * chordX + chordY * chordY;
  const halfTurn = ratio > 1 - HALF_TURN_SLACK;
  const growth = ratio > 1 ? Math.sqrt(ratio) : 1;
  const rx = radii[0] * growth;
  const ry = radii[1] * growth;
  const offset = halfTurn ? 0 : Math.sqrt(1 / ratio - 1) * (large === positive ? -1 : 1);
  const unitX = (offset * chordY) / growth;
  const unitY = (-offset * chordX) / growth;
  const start = Math.atan2(chordY / growth - unitY, chordX / growth - unitX);
  const end = Math.atan2(-chordY / growth - unitY, -chordX / growth - unitX);
  let sweep = halfTurn ? TURN / 2 : (((end - start) % TURN) + TURN) % TURN;
  if (!positive) sweep = halfTurn ? -sweep : sweep - TURN;
  const centre: Point2 = [
    cos * rx * unitX - sin * ry * unitY + (from[0] + to[0]) / 2,
    sin * rx * unitX + cos * ry * unitY + (from[1] + to[1]) / 2,
  ];
  return circleOrEllipse({ kind: "ellipse", centre, radii: [rx, ry], turn, start, sweep });
}

/** The same arc as an exact `Arc` where its ellipse is a circle. */
export function circleOrEllipse(arc: EllipticArc): Arc | EllipticArc {
  const { centre, radii, turn, start, sweep } = arc;
  if (Math.abs(radii[0] / radii[1] - 1) >= CIRCLE_SLACK) return arc;
  return { kind: "arc", centre, radius: radii[0], start: start + turn, sweep };
}

/** The point at parameter angle `angle`, radians. */
export function ellipsePointAt(arc: EllipticArc, angle: number): Point2 {
  const x = arc.radii[0] * Math.cos(angle);
  const y = arc.radii[1] * Math.sin(angle);
  const cos = Math.cos(arc.turn);
  const sin = Math.sin(arc.turn);
  return [arc.centre[0] + cos * x - sin * y, arc.centre[1] + sin * x + cos * y];
}

/** The points after the start, up to and with the end, that part the arc into so many equal angles of its parameter. */
export function divideEllipse(arc: EllipticArc, count: number): Point2[] {
  return Array.from({ length: count }, (_, i) => ellipsePointAt(arc, arc.start + (arc.sweep * (i + 1)) / count));
}
