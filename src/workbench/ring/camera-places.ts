/**
 * Places from which the ring is looked at, by name: as a maker turns it in the hand.
 */
import { MathUtils, Spherical, Vector3 } from "three";

/** Where the camera is, from what it looks at; degrees. The ring stands, its top up. */
interface CameraPlace {
  /** Round the upright axis from the front (along the finger), to the right. */
  readonly azimuth: number;
  /** Above the level. */
  readonly elevation: number;
  /** Of what is seen when the whole ring is, how much is seen: less is nearer. */
  readonly share: number;
  /** What it looks at: the ring's middle, or the lowest place of its bore. */
  readonly at: "middle" | "bore";
}

export const CAMERA_PLACES = {
  turned: { azimuth: 38, elevation: 16, share: 1, at: "middle" },
  front: { azimuth: 0, elevation: 0, share: 1, at: "middle" },
  side: { azimuth: 90, elevation: 0, share: 1, at: "middle" },
  top: { azimuth: 0, elevation: 90, share: 1, at: "middle" },
  bore: { azimuth: 0, elevation: 33, share: 0.55, at: "bore" },
} as const satisfies Readonly<Record<string, CameraPlace>>;

export type CameraPlaceName = keyof typeof CAMERA_PLACES;

/** A camera's place and what it looks at, mm. */
export interface Pose {
  readonly position: Vector3;
  readonly target: Vector3;
}

/** Room round the ring, over its radius: dimension lines stand there. Chosen. */
const ROOM = 1.32;

/** The distance from which a ball is seen whole, mm. */
export function distanceFor(radius: number, fovDegrees: number, aspect: number): number {
  const half = MathUtils.degToRad(fovDegrees) / 2;
  // The narrower way decides.
  const across = Math.min(half, Math.atan(Math.tan(half) * aspect));
  return (radius * ROOM) / Math.sin(across);
}

/**
 * @param size of the ring: the radius of the ball about it and of its bore, mm
 * @param distance from which the whole ring is seen, mm
 */
export function poseAt(
  name: CameraPlaceName,
  size: { readonly radius: number; readonly bore: number },
  distance: number,
): Pose {
  const { azimuth, elevation, share, at } = CAMERA_PLACES[name];
  const target = new Vector3(0, at === "bore" ? -size.bore : 0, 0);
  const polar = MathUtils.degToRad(90 - elevation);
  const spherical = new Spherical(distance * share, polar, MathUtils.degToRad(azimuth)).makeSafe();
  return { position: new Vector3().setFromSpherical(spherical).add(target), target };
}

/** Between two poses, `share` of the way from 0 to 1: round the ring rather than through it. */
export function between(from: Pose, to: Pose, share: number): Pose {
  const [start, end] = [from, to].map(({ position, target }) =>
    new Spherical().setFromVector3(position.clone().sub(target)),
  );
  // The shorter way round.
  const turn = MathUtils.euclideanModulo(end.theta - start.theta + Math.PI, 2 * Math.PI) - Math.PI;
  const spherical = new Spherical(
    MathUtils.lerp(start.radius, end.radius, share),
    MathUtils.lerp(start.phi, end.phi, share),
    start.theta + turn * share,
  ).makeSafe();
  const target = from.target.clone().lerp(to.target, share);
  return { position: new Vector3().setFromSpherical(spherical).add(target), target };
}
