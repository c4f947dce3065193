/**
 * A mild lens that circles the target: direction, screen axes and the map from space to pixels.
 */
import { add, cross, dot, normalize, type Vec } from "./vector.js";

/** Distance of the eye from the target in bounding radii: far enough for a mild perspective, and never inside. */
const EYE_DISTANCE = 6;

/** Share of the picture's smaller side that the bounding sphere fills at zoom 1. */
const FILL = 0.94;

export interface View {
  readonly width: number;
  readonly height: number;
  /** Radians about the up axis; 0 looks along −x for a lying ring. */
  readonly azimuth: number;
  /** Radians above the ground. */
  readonly elevation: number;
  readonly zoom: number;
  readonly target: Vec;
  readonly radius: number;
  readonly up: "y" | "z";
}

export interface Camera {
  readonly eye: Vec;
  /** The world's up axis. */
  readonly up: Vec;
  /** Screen axes in space: to the right, upwards, into the picture. */
  readonly right: Vec;
  readonly above: Vec;
  readonly into: Vec;
  /** Pixels a unit of x/depth. */
  readonly focal: number;
  readonly width: number;
  readonly height: number;
}

export function makeCamera({ width, height, azimuth, elevation, zoom, target, radius, up: axis }: View): Camera {
  const up: Vec = axis === "z" ? [0, 0, 1] : [0, 1, 0];
  // The ground's two axes, chosen so that (first, second, up) is right-handed.
  const first: Vec = axis === "z" ? [1, 0, 0] : [0, 0, 1];
  const second = cross(up, first);
  const level = add(scaled(first, Math.cos(azimuth)), second, Math.sin(azimuth));
  const towardsEye = add(scaled(level, Math.cos(elevation)), up, Math.sin(elevation));
  const right = add(scaled(second, Math.cos(azimuth)), first, -Math.sin(azimuth));
  const into = scaled(towardsEye, -1);
  return {
    eye: add(target, towardsEye, EYE_DISTANCE * radius),
    up,
    right,
    above: cross(right, into),
    into,
    focal: (FILL * zoom * Math.min(width, height) * Math.sqrt(EYE_DISTANCE ** 2 - 1)) / 2,
    width,
    height,
  };
}

/** Direction from the eye through a pixel's centre. */
export function pixelRay(camera: Camera, x: number, y: number): Vec {
  const across = (x + 0.5 - camera.width / 2) / camera.focal;
  const down = (y + 0.5 - camera.height / 2) / camera.focal;
  return normalize(add(add(camera.into, camera.right, across), camera.above, -down));
}

/** Pixel coordinates and one over the depth of each vertex, three numbers each. */
export function projectPoints(camera: Camera, positions: Float64Array): Float64Array {
  const projected = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) {
    const from: Vec = [
      positions[i] - camera.eye[0],
      positions[i + 1] - camera.eye[1],
      positions[i + 2] - camera.eye[2],
    ];
    const inverse = 1 / dot(from, camera.into);
    projected[i] = camera.width / 2 + camera.focal * dot(from, camera.right) * inverse - 0.5;
    projected[i + 1] = camera.height / 2 - camera.focal * dot(from, camera.above) * inverse - 0.5;
    projected[i + 2] = inverse;
  }
  return projected;
}

function scaled(a: Vec, scale: number): Vec {
  return [a[0] * scale, a[1] * scale, a[2] * scale];
}
