/**
 * Bodies laid where a stone stands, and the frame half way between two stones.
 */
import { vec3 } from "gl-matrix";
import type { Mesh } from "../../mesh/mesh.js";
import { transformMesh } from "../../mesh/transform.js";
import { acrossOf, type Frame } from "../frame.js";

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
