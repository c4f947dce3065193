/**
 * Where a stone stands: its own coordinates in space, and the frame half way between two stones.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../base/math/point.js";
import type { Mesh } from "../../mesh/mesh.js";
import { transformMesh } from "../../mesh/transform.js";

/** Coordinates in space: the origin, and the unit vectors of x and z at right angles. */
export interface Frame {
  readonly at: Point3;
  readonly along: Point3;
  readonly out: Point3;
}

/** Unit vector of y. */
export function acrossOf({ along, out }: Pick<Frame, "along" | "out">): Point3 {
  return vec3.cross([0, 0, 0], out, along) as unknown as Point3;
}

/** A point in space from a frame's coordinates. */
export function toSpace(frame: Frame, [x, y, z]: Point3): Point3 {
  const { at, along, out } = frame;
  const across = acrossOf(frame);
  const [px, py, pz] = [0, 1, 2].map((k) => at[k] + x * along[k] + y * across[k] + z * out[k]);
  return [px, py, pz];
}

/** A point's coordinates in a frame. */
export function inFrame(frame: Frame, point: Point3): Point3 {
  const { at, along, out } = frame;
  const away = vec3.subtract([0, 0, 0], point, at);
  return [vec3.dot(away, along), vec3.dot(away, acrossOf(frame)), vec3.dot(away, out)];
}

/** A body of a frame's coordinates, in space. */
export function layInSpace(mesh: Mesh, frame: Frame): Mesh {
  const { at, along, out } = frame;
  // biome-ignore format: a matrix by columns
  return transformMesh(mesh, [
    ...along, 0,
    ...acrossOf(frame), 0,
    ...out, 0,
    ...at, 1,
  ] as unknown as Parameters<typeof transformMesh>[1]);
}

/** Stones nearer to each other than this have no direction between them, mm. */
const TOGETHER = 1e-6;

/**
 * The frame half way between two: x from the one to the other, z the mean of theirs, its origin on the arc through both;
 * undefined where they stand in one place.
 */
export function between(a: Frame, b: Frame): Frame | undefined {
  const way = vec3.subtract([0, 0, 0], b.at, a.at);
  const out = vec3.normalize([0, 0, 0], vec3.add([0, 0, 0], a.out, b.out));
  const lean = vec3.subtract([0, 0, 0], b.out, a.out);
  const flat = vec3.scaleAndAdd([0, 0, 0], way, out, -vec3.dot(way, out));
  const distance = vec3.length(flat);
  if (!(distance > TOGETHER)) return undefined;
  const along = vec3.scale([0, 0, 0], flat, 1 / distance);
  // Over half a chord of an arc whose ends lean by ± β it rises by a quarter of the chord times tan β.
  const rise = (vec3.dot(lean, along) / 2) * (distance / 4);
  const at = vec3.scaleAndAdd([0, 0, 0], vec3.lerp([0, 0, 0], a.at, b.at, 1 / 2), out, rise);
  return { at, along, out } as unknown as Frame;
}
