/**
 * A mild lens that circles its target: the eye, the screen's axes and the map from space to samples.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../base/math/point.js";

/** Distance of the eye from the target in bounding radii: a long lens, so that a band's near and far edge look alike. */
const EYE_DISTANCE = 7;

/** Share of the picture's smaller side that the bounding sphere fills at zoom 1. */
const FILL = 0.88;

/** How a ring stands: on its bottom with the top of the ring up, or flat with the finger's axis upright. */
export type Stance = "standing" | "lying";

/** A place to look from. */
export interface View {
  readonly stance: Stance;
  /**
   * Degrees about the upright axis. Standing: 0 looks along the finger's axis, 90 across the band. Lying: 0 looks at the
   * side of +x, 90 at the top of the ring (+y).
   */
  readonly azimuth: number;
  /** Degrees above the ground, −90 to 90. */
  readonly elevation: number;
}

export interface Camera {
  readonly eye: Point3;
  /** The world's upright axis. */
  readonly up: Point3;
  /** Level and square to `up`, from the target to the eye's side; `right`, `up` and `towards` are the studio's axes. */
  readonly towards: Point3;
  /** Screen axes in space: to the right, upwards, into the picture. */
  readonly right: Point3;
  readonly above: Point3;
  readonly into: Point3;
  /** The least depth that is seen, mm. */
  readonly nearest: number;
  /** Samples a unit of x/depth. */
  readonly focal: number;
  /** Samples. */
  readonly width: number;
  readonly height: number;
}

export interface CameraOptions {
  readonly view: View;
  /** Samples. */
  readonly width: number;
  readonly height: number;
  readonly zoom: number;
  /** Middle and radius of what is looked at, mm. */
  readonly centre: Point3;
  readonly radius: number;
  /** Of the eye from the middle, mm, above the radius. Default the long lens's. */
  readonly distance?: number | undefined;
}

export function makeCamera({ view, width, height, zoom, centre, radius, ...lens }: CameraOptions): Camera {
  const distance = lens.distance ?? EYE_DISTANCE * radius;
  const [azimuth, elevation] = [(view.azimuth * Math.PI) / 180, (view.elevation * Math.PI) / 180];
  const lying = view.stance === "lying";
  const up: Point3 = lying ? [0, 0, 1] : [0, 1, 0];
  // The ground's axes; first, second and up are right-handed.
  const first: Point3 = lying ? [1, 0, 0] : [0, 0, 1];
  const second: Point3 = lying ? [0, 1, 0] : [1, 0, 0];
  const towards = mix(first, Math.cos(azimuth), second, Math.sin(azimuth));
  const right = mix(second, Math.cos(azimuth), first, -Math.sin(azimuth));
  const towardsEye = mix(towards, Math.cos(elevation), up, Math.sin(elevation));
  const into = mix(towardsEye, -1, up, 0);
  return {
    eye: mix(centre, 1, towardsEye, distance),
    up,
    towards,
    right,
    above: mix(up, Math.cos(elevation), towards, -Math.sin(elevation)),
    into,
    nearest: NEAREST * distance,
    focal: (FILL * zoom * Math.min(width, height) * Math.sqrt((distance / radius) ** 2 - 1)) / 2,
    width,
    height,
  };
}

/** What lies less deep than this share of what lies in the middle is behind the eye or too near to be seen. */
const NEAREST = 0.02;

/**
 * Sample coordinates (y downwards, whole numbers at samples) and one over the depth of each point; no numbers for points
 * behind the eye, whose triangles then are not drawn.
 */
export function projectPoints(
  { eye, right, above, into, nearest, focal, width, height }: Camera,
  points: Float64Array,
) {
  const projected = new Float64Array(points.length);
  const [rx, ry, rz] = right;
  const [ax, ay, az] = above;
  const [ix, iy, iz] = into;
  for (let i = 0; i < points.length; i += 3) {
    const x = points[i] - eye[0];
    const y = points[i + 1] - eye[1];
    const z = points[i + 2] - eye[2];
    const depth = x * ix + y * iy + z * iz;
    const inverse = depth > nearest ? 1 / depth : Number.NaN;
    projected[i] = width / 2 - 0.5 + focal * (x * rx + y * ry + z * rz) * inverse;
    projected[i + 1] = height / 2 - 0.5 - focal * (x * ax + y * ay + z * az) * inverse;
    projected[i + 2] = inverse;
  }
  return projected;
}

function mix(a: Point3, p: number, b: Point3, q: number): Point3 {
  return vec3.scaleAndAdd([0, 0, 0], vec3.scale([0, 0, 0], a as vec3, p), b as vec3, q) as Point3;
}
