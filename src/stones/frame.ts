/**
 * Where a stone stands and how it is turned: its own coordinates in space.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../base/math/point.js";

/** Origin and axes of a stone's own coordinates, mm; the axes are unit vectors at right angles. */
export interface Frame {
  readonly at: Point3;
  readonly along: Point3;
  readonly out: Point3;
}

/** The third axis, +y. */
export function acrossOf({ along, out }: Pick<Frame, "along" | "out">): Point3 {
  return vec3.cross([0, 0, 0], out, along) as unknown as Point3;
}

/** Where a point of the stone's own coordinates lies in space. */
export function intoSpace(frame: Frame, [x, y, z]: Point3): Point3 {
  const across = acrossOf(frame);
  const { at, along, out } = frame;
  const part = (k: 0 | 1 | 2) => at[k] + x * along[k] + y * across[k] + z * out[k];
  return [part(0), part(1), part(2)];
}

/** A point's place in the stone's own coordinates: the inverse. */
export function fromSpace(frame: Frame, point: Point3): Point3 {
  const { at, along, out } = frame;
  const away = vec3.subtract([0, 0, 0], point, at);
  return [vec3.dot(away, along), vec3.dot(away, acrossOf(frame)), vec3.dot(away, out)];
}

/** A direction at right angles to another one, as near as may be to a wanted one; unit vectors. */
export function squareTo(out: Point3, wanted: Point3): Point3 {
  const aside = vec3.scaleAndAdd([0, 0, 0], wanted, out, -vec3.dot(wanted, out));
  return vec3.normalize(aside, aside) as unknown as Point3;
}

/** A direction at right angles to `out`, turned about it, counter-clockwise as seen from its tip; radians. */
export function turnedAbout(out: Point3, direction: Point3, angle: number): Point3 {
  const across = vec3.cross([0, 0, 0], out, direction);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const part = (k: 0 | 1 | 2) => cos * direction[k] + sin * across[k];
  return [part(0), part(1), part(2)];
}
