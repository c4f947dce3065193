/**
 * A spot on the band where a stone may stand, and the frame of a stone there.
 */
import { vec3 } from "gl-matrix";
import type { Band } from "../band/band.js";
import type { BandSurface } from "../band/surface/surface.js";
import type { Point3 } from "../base/math/point.js";
import { type Frame, squareTo, turnedAbout } from "./frame.js";
import type { StoneSurface } from "./placed-stone.js";

/** A spot on the surface. */
export interface Spot {
  readonly surface: StoneSurface;
  readonly foot: Point3;
  /** Unit normal. */
  readonly out: Point3;
  /** The way on along the line that it lies on, a unit vector at right angles to the normal. */
  readonly way: Point3;
}

/** Half the step over which the way on is taken, mm: short against any radius, long against rounding. */
const STEP = 1e-4;

/** The same as an angle. */
const TURNED = 1e-5;

/** The spot at (u, v) of the seat; `way` is the flat direction of what it lies on, default along the band. */
export function seatSpot(wrap: BandSurface, u: number, v: number, way: readonly [number, number] = [1, 0]): Spot {
  const out = wrap.normal(u, v);
  const size = Math.hypot(...way);
  const [du, dv] = [(way[0] / size) * STEP, (way[1] / size) * STEP];
  const ahead = vec3.subtract([0, 0, 0], wrap.forward(u + du, v + dv, 0), wrap.forward(u - du, v - dv, 0));
  const surface: StoneSurface = { name: "seat", u, v, angle: wrap.angleAt(u) };
  return { surface, foot: wrap.forward(u, v, 0), out, way: squareTo(out, ahead as unknown as Point3) };
}

/** The spot in the middle of a rail's top at θ, radians; 0 is the rail at low w. */
export function railSpot(band: Band, wrap: BandSurface, side: 0 | 1, angle: number): Spot {
  const at = (theta: number): Point3 => {
    const { faces, top } = band.sectionAt(theta).rails as NonNullable<Band["rails"]>;
    return [top * Math.cos(theta), top * Math.sin(theta), (faces[side][0] + faces[side][1]) / 2];
  };
  const foot = at(angle);
  const ahead = vec3.subtract([0, 0, 0], at(angle + TURNED), at(angle - TURNED));
  // The top is level across the band, so the axis lies in it.
  const normal = vec3.cross([0, 0, 0], ahead, [0, 0, 1]);
  const out = vec3.normalize(normal, normal) as unknown as Point3;
  const u = wrap.uAt(angle);
  return { surface: { name: "rail", u, v: foot[2], angle }, foot, out, way: squareTo(out, ahead as unknown as Point3) };
}

/**
 * The frame of a stone on a spot.
 *
 * @param rise mm from the surface up to the girdle's upper edge
 * @param turn radians from the way on, counter-clockwise from outside
 */
export function frameOn({ foot, out, way }: Spot, rise: number, turn: number): Frame {
  const at = vec3.scaleAndAdd([0, 0, 0], foot, out, rise) as unknown as Point3;
  return { at, out, along: turn === 0 ? way : turnedAbout(out, way, turn) };
}
