/**
 * The place on a mesh that is meant: a corner near the pointer, else the very place.
 */
import { type Camera, Vector2, Vector3 } from "three";
import { type Buffers, cornersOf, type Kept, meetRay, type RayHit } from "../../entries/view.js";

/** How near a corner must be to be meant, CSS pixels. Chosen: half of what a finger covers. */
const NEAR = 12;

/** A place that was pointed at. */
export interface Pointed {
  readonly point: readonly [number, number, number];
  /** Whether it is a corner of the mesh. */
  readonly corner: boolean;
  readonly hit: RayHit;
}

/** A place of the picture, and the picture's size; CSS pixels from its left upper corner. */
export interface PicturePlace {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What lies at a place of the picture; undefined where no metal is. */
export function pointAt(buffers: Buffers, camera: Camera, place: PicturePlace, kept?: Kept): Pointed | undefined {
  const { x, y, width, height } = place;
  const onScreen = new Vector2((2 * x) / width - 1, 1 - (2 * y) / height);
  const near = new Vector3(onScreen.x, onScreen.y, -1).unproject(camera);
  const far = new Vector3(onScreen.x, onScreen.y, 1).unproject(camera);
  const hit = meetRay(buffers, { origin: near.toArray(), direction: far.sub(near).toArray() }, kept);
  if (hit === undefined) return undefined;
  const corners = cornersOf(buffers, hit.triangle).map((point) => {
    const seen = new Vector3(...point).project(camera);
    return { point, away: Math.hypot(((seen.x - onScreen.x) * width) / 2, ((seen.y - onScreen.y) * height) / 2) };
  });
  const nearest = corners.reduce((best, corner) => (corner.away < best.away ? corner : best));
  if (nearest.away > NEAR) return { point: hit.point, corner: false, hit };
  return { point: nearest.point, corner: true, hit };
}
