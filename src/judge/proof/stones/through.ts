/**
 * A column in space, for bodies to be asked where it goes through them.
 */
import type { Point3 } from "../../../base/math/point.js";
import type { Stand } from "../columns.js";
import type { Line } from "./span.js";

export interface Through {
  /** θ of its half plane, radians. */
  readonly angle: number;
  /** Its place at 0, mm, and its unit direction, in space. */
  readonly start: Point3;
  readonly way: Point3;
  /** The same in (w, r). */
  readonly stand: Pick<Stand, "point" | "way">;
}

export function throughSpace(angle: number, stand: Pick<Stand, "point" | "way">): Through {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [[w, r], [dw, dr]] = [stand.point, stand.way];
  return { angle, start: [r * cos, r * sin, w], way: [dr * cos, dr * sin, dw], stand };
}

/** Origin and axes of a body's coordinates; unit vectors at right angles. */
export interface Axes {
  readonly at: Point3;
  readonly along: Point3;
  readonly across: Point3;
  readonly out: Point3;
}

/** A column in a body's coordinates. */
export function lineIn({ at, along, across, out }: Axes, { start, way }: Through): Line {
  const x = start[0] - at[0];
  const y = start[1] - at[1];
  const z = start[2] - at[2];
  return {
    x: x * along[0] + y * along[1] + z * along[2],
    y: x * across[0] + y * across[1] + z * across[2],
    z: x * out[0] + y * out[1] + z * out[2],
    dx: way[0] * along[0] + way[1] * along[1] + way[2] * along[2],
    dy: way[0] * across[0] + way[1] * across[1] + way[2] * across[2],
    dz: way[0] * out[0] + way[1] * out[1] + way[2] * out[2],
  };
}
