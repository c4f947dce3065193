/**
 * A surface of the band that carries something, with the map between the flat pattern and space: what all others ask.
 *
 *     forward(u, v, h):  θ = angleAt(u),   (w, r) = line at θ, at v, + h · its normal,   x = r cos θ, y = r sin θ, z = w
 *
 * u runs along the band, mm at the reference radius, v across it along the surface's line, 0 at the line's middle and
 * growing towards its end, h along the line's normal. Beyond its ends the line goes on straight. A point never leaves the
 * half plane of its angle, so that mirrors through the axis and the ends of a span are the same flat and bent.
 */
import type { Point2, Point3 } from "../../base/math/point.js";

/** The surface's line at one angle: where the half plane from the finger axis meets it. In (w, r), mm. */
export interface SurfaceLine {
  /** Arc length, mm. */
  readonly length: number;
  /** v of its end, mm: half its length where flat lengths across are true. */
  readonly reach: number;
  /** v of the place so many mm of arc in from the line's start or end. */
  readonly inFrom: (side: "start" | "end", inset: number) => number;
  /** The section point at v and h. */
  readonly point: (v: number, h: number) => Point2;
  /** Unit normal to the left of the line: outward on a seat, whose line runs from low w to high w. */
  readonly normal: (v: number) => Point2;
  /** Radius of the hollow that the line goes round at v, mm: at that height its normals meet. Infinite where it is no hollow. */
  readonly hollowAt: (v: number) => number;
  /** v and h of a section point: the foot on the nearest part of the line. */
  readonly inverse: (w: number, r: number) => readonly [v: number, h: number];
}

/** A pure pair: `inverse(forward(p))` is p for every point within the relief's reach of the surface. */
export interface BandSurface {
  /** R, mm: at this radius flat lengths along u are true. */
  readonly referenceRadius: number;
  /** u once round the finger, mm: 2πR. */
  readonly round: number;
  /** θ of u = 0, radians, counter-clockwise from +x seen from +z. */
  readonly startAngle: number;
  /** Length of the line where flat lengths across are true, mm; v runs over ± half of it. */
  readonly seatLength: number;
  /** Whether its line is the same at all angles, so that any turn about the finger axis brings it onto itself. */
  readonly revolved: boolean;
  /** Whether flat lengths across are true at every angle: v is then arc length from the line's middle, within ± its `reach`. */
  readonly keeps: boolean;
  /** θ at u, radians. */
  readonly angleAt: (u: number) => number;
  /** u at θ, mm: the inverse, whatever whole turns θ has. */
  readonly uAt: (angle: number) => number;
  /** The line across the band at θ, radians. */
  readonly lineAt: (angle: number) => SurfaceLine;
  /** The point in space over (u, v) at height h, mm. */
  readonly forward: (u: number, v: number, h: number) => Point3;
  /** u from 0 to once round. */
  readonly inverse: (x: number, y: number, z: number) => Point3;
  /** Unit normal of the surface itself in space. */
  readonly normal: (u: number, v: number) => Point3;
  /** How much longer than flat a short line is: along the band at a height above the surface, and across it on the surface. */
  readonly stretchAt: (u: number, v: number, h: number) => LocalStretch;
}

/** λu and λv: 1 is true. */
export interface LocalStretch {
  readonly along: number;
  readonly across: number;
}
