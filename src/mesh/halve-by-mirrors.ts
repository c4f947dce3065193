/**
 * Which of a mesh's first triangles stand for all of them: a unit of a ring is often half of it and its mirror image, or a
 * quarter of it and three.
 */
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "./mesh.js";

/** The triangles that stand for others. */
export interface Halved {
  /** So many, from the first on. */
  readonly first: number;
  /** How many images each of them has among those that were asked about, itself among them: 1, 2 or 4. */
  readonly images: number;
}

/** Mirrors that a unit can have beside its turns: across the band and along it. */
const MOST_MIRRORS = 2;

/** Corners farther than this from where a mirror puts them are no image, mm: a thousand times the rounding of a turn. */
const SAME_PLACE = 1e-9;

/** A mirror moves a corner by at least this much before its plane is taken from it, mm: then it is known to one in a million. */
const CLEARLY_MOVED = 1e-3;

/**
 * Halves the first triangles of a mesh as long as those of their second half are, one by one and turned over, the mirror
 * images of those of the first: in z = 0 or in a plane through the z axis, which map onto itself every ring that is made of
 * turned images of these triangles.
 *
 * @param count of triangles that are asked about, from the first on; 0 to all
 */
export function halveByMirrors(mesh: Mesh, count: number): Halved {
  let [first, images] = [count, 1];
  while (images < 2 ** MOST_MIRRORS && first > 0 && first % 2 === 0 && isMirrored(mesh, first)) {
    first /= 2;
    images *= 2;
  }
  return { first, images };
}

function isMirrored({ positions, triangles }: Mesh, count: number): boolean {
  const half = (3 * count) / 2;
  const normal = normalOf({ positions, triangles }, half);
  if (normal === undefined || !mapsAxis(normal)) return false;
  const [nx, ny, nz] = normal;
  for (let h = 0; h < half; h++) {
    const own = 3 * triangles[h];
    const image = 3 * triangles[half + turnedOver(h)];
    const x = positions[own];
    const y = positions[own + 1];
    const z = positions[own + 2];
    const reach = 2 * (x * nx + y * ny + z * nz);
    const offX = Math.abs(x - reach * nx - positions[image]);
    const offY = Math.abs(y - reach * ny - positions[image + 1]);
    const offZ = Math.abs(z - reach * nz - positions[image + 2]);
    if (!(offX + offY + offZ <= SAME_PLACE)) return false;
  }
  return true;
}

/** The unit normal of the mirror, from the first corner that it clearly moves. */
function normalOf({ positions, triangles }: Mesh, half: number): Point3 | undefined {
  for (let h = 0; h < half; h++) {
    const own = 3 * triangles[h];
    const image = 3 * triangles[half + turnedOver(h)];
    const x = positions[image] - positions[own];
    const y = positions[image + 1] - positions[own + 1];
    const z = positions[image + 2] - positions[own + 2];
    const length = Math.sqrt(x * x + y * y + z * z);
    if (length >= CLEARLY_MOVED) return [x / length, y / length, z / length];
  }
  return undefined;
}

/** Whether a mirror through the origin maps the z axis onto itself: its normal lies along the axis or across it. */
function mapsAxis([x, y, z]: Point3): boolean {
  return Math.abs(z) <= SAME_PLACE || Math.hypot(x, y) <= SAME_PLACE;
}

/** The corner of a triangle that stands for another's, which runs the other way round. */
function turnedOver(corner: number): number {
  const k = corner % 3;
  return k === 0 ? corner : corner - k + (3 - k);
}
