/**
 * Affine maps of the plane, and exact curves under them: a cubic's control points move with the map, and an arc of a
 * circle or ellipse becomes an arc of another ellipse, whose axes are the singular vectors of the map (any handbook of
 * linear algebra).
 */
import { TURN } from "../units.js";
import { circleOrEllipse, type EllipticArc } from "./elliptic-arc.js";
import type { PathSegment, Subpath } from "./path-data.js";
import type { Point2 } from "./point.js";

/** x′ = a x + c y + e, y′ = b x + d y + f, in SVG's order of the six numbers. */
export type Affine = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export const IDENTITY: Affine = [1, 0, 0, 1, 0, 0];

export function translation(x: number, y: number): Affine {
  return [1, 0, 0, 1, x, y];
}

export function scaling(x: number, y: number): Affine {
  return [x, 0, 0, y, 0, 0];
}

/** Turns by an angle in radians, from the x axis towards the y axis. */
export function rotation(angle: number): Affine {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos, sin, -sin, cos, 0, 0];
}

/** The map that applies the last of these first, as nested transforms do. */
export function compose(...maps: readonly Affine[]): Affine {
  return maps.reduce(
    ([a, b, c, d, e, f], [p, q, r, s, t, u]): Affine => [
      a * p + c * q,
      b * p + d * q,
      a * r + c * s,
      b * r + d * s,
      a * t + c * u + e,
      b * t + d * u + f,
    ],
    IDENTITY,
  );
}

export function mapPoint([a, b, c, d, e, f]: Affine, [x, y]: Point2): Point2 {
  return [a * x + c * y + e, b * x + d * y + f];
}

/** Signed factor on areas; 0 where the map flattens the plane. */
export function determinant([a, b, c, d]: Affine): number {
  return a * d - b * c;
}

/** The largest and smallest factor on lengths: the singular values of the map. */
export function stretches(map: Affine): readonly [largest: number, smallest: number] {
  const { large, small } = singular(map);
  return [large, Math.abs(small)];
}

/** A run of path pieces under a map that flattens nothing. */
export function mapSubpath(map: Affine, { start, segments, closed }: Subpath): Subpath {
  return { start: mapPoint(map, start), segments: segments.map((segment) => mapSegment(map, segment)), closed };
}

function mapSegment(map: Affine, segment: PathSegment): PathSegment {
  switch (segment.kind) {
    case "line":
      return { kind: "line", from: mapPoint(map, segment.from), to: mapPoint(map, segment.to) };
    case "cubic": {
      const [a, b, c, d] = segment.points.map((point) => mapPoint(map, point));
      return { kind: "cubic", points: [a, b, c, d] };
    }
    case "arc": {
      const { centre, radius, start, sweep } = segment;
      return mapEllipse(map, { kind: "ellipse", centre, radii: [radius, radius], turn: 0, start, sweep });
    }
    case "ellipse":
      return mapEllipse(map, segment);
  }
}

/** The map of the unit circle onto the arc's ellipse, taken apart again after the map has been put on it. */
function mapEllipse(map: Affine, { centre, radii, turn, start, sweep }: EllipticArc): PathSegment {
  const whole = compose(map, rotation(turn), scaling(...radii));
  const { large, small, left, right } = singular(whole);
  const sign = small < 0 ? -1 : 1;
  return circleOrEllipse({
    kind: "ellipse",
    centre: mapPoint(map, centre),
    radii: [large, Math.abs(small)],
    turn: left,
    start: sign * (start - right),
    sweep: sign * sweep,
  });
}

/**
 * The linear part as turn(left) · diag(large, small) · turn(−right); small is below 0 where the map mirrors.
 * Closed form for 2 × 2 matrices by half sums and differences (any handbook of linear algebra).
 */
function singular([a, b, c, d]: Affine) {
  const [e, f, g, h] = [(a + d) / 2, (a - d) / 2, (b + c) / 2, (b - c) / 2];
  const [q, r] = [Math.hypot(e, h), Math.hypot(f, g)];
  const [p, s] = [Math.atan2(g, f), Math.atan2(h, e)];
  return { large: q + r, small: q - r, left: ((p + s) / 2) % TURN, right: ((p - s) / 2) % TURN };
}
