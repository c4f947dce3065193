/**
 * The place on a mesh that is meant: a corner near the pointer, else the very place.
 */
import { type Camera, Vector2, Vector3 } from "three";
import { type Buffers, cornersOf, type Kept, meetRay, type Ray, type RayHit } from "../../entries/view.js";

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

/** From the nearest to the farthest that a place of the picture can show. */
export function rayAt(camera: Camera, place: PicturePlace): Ray {
  const { x, y } = onScreenAt(place);
  const near = new Vector3(x, y, -1).unproject(camera);
  const far = new Vector3(x, y, 1).unproject(camera);
  return { origin: near.toArray(), direction: far.sub(near).toArray() };
}

/** From −1 to 1 each, y upwards. */
function onScreenAt({ x, y, width, height }: PicturePlace): Vector2 {
  return new Vector2((2 * x) / width - 1, 1 - (2 * y) / height);
}

/** What lies at a place of the picture; undefined where no metal is. */
export function pointAt(buffers: Buffers, camera: Camera, place: PicturePlace, kept?: Kept): Pointed | undefined {
  const { width, height } = place;
  const onScreen = onScreenAt(place);
  const hit = meetRay(buffers, rayAt(camera, place), kept);
  if (hit === undefined) return undefined;
  const corners = cornersOf(buffers, hit.triangle).map((point) => {
    const seen = new Vector3(...point).project(camera);
    return { point, away: Math.hypot(((seen.x - onScreen.x) * width) / 2, ((seen.y - onScreen.y) * height) / 2) };
  });
  const nearest = corners.reduce((best, corner) => (corner.away < best.away ? corner : best));
  if (nearest.away > NEAR) return { point: hit.point, corner: false, hit };
  return { point: nearest.point, corner: true, hit };
}
