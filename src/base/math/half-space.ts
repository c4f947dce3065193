/**
 * Half spaces, and the planes that bound them.
 */
import { vec3 } from "gl-matrix";
import type { Point2, Point3 } from "./point.js";

/** The half space in which normal · p ≤ offset. */
export interface HalfSpace {
  /** Unit vector. */
  readonly normal: Point3;
  /** mm. */
  readonly offset: number;
}

/** Signed distance of a point from the plane, mm: negative inside. */
export function distanceTo({ normal, offset }: HalfSpace, x: number, y: number, z: number): number {
  return normal[0] * x + normal[1] * y + normal[2] * z - offset;
}

/** Coordinates in the plane such that what runs counter-clockwise in them does so seen from outside the half space. */
export function planeCoordinates({ normal }: HalfSpace): (x: number, y: number, z: number) => Point2 {
  const [nx, ny, nz] = normal;
  // The first axis is at right angles to the normal and to the coordinate axis along which the normal is shortest.
  const [ax, ay, az] = Math.abs(nz) <= Math.max(Math.abs(nx), Math.abs(ny)) ? [-ny, nx, 0] : [0, -nz, ny];
  const length = Math.hypot(ax, ay, az);
  const [ex, ey, ez] = [ax / length, ay / length, az / length];
  const [fx, fy, fz] = vec3.cross([0, 0, 0], normal, [ex, ey, ez]);
  return (x, y, z) => [ex * x + ey * y + ez * z, fx * x + fy * y + fz * z];
}

/** What lies on the far side of the half plane at an angle round the z axis, clockwise from it within half a turn. */
export function before(angle: number): HalfSpace {
  return { normal: [-Math.sin(angle), Math.cos(angle), 0], offset: 0 };
}

/** What lies counter-clockwise from that half plane within half a turn. */
export function after(angle: number): HalfSpace {
  return { normal: [Math.sin(angle), -Math.cos(angle), 0], offset: 0 };
}
