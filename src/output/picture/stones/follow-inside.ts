/**
 * Light inside a clear stone, followed backwards from the eye: refracted in by Snell's law, mirrored by the planes that bound
 * the body, and at each of them parted by Fresnel's equations into what leaves and what stays. The stone is convex, so the
 * next plane is the one that the ray meets first.
 *
 * Where this is an approximation: one index for all colours, so no fire; no polarization; what leaves the stone does not
 * enter another one; a bounded number of mirrorings.
 */
import type { Point3 } from "../../../base/math/point.js";
import type { StoneBody } from "../../stones/shown-stone.js";

/** Mirrorings that are followed. Chosen: of light that enters a brilliant's table a few hundredths are left then. */
const MOST_BOUNCES = 10;

/** Light of which less is left is not followed on. Chosen: below a step of the picture's 256. */
const LEAST_LEFT = 0.003;

/** Rays that lie in a plane do not meet it. */
const LEVEL = 1e-9;

/** Adds `share` (red, green, blue) of the light that comes in at a place in a direction, both in the stone's coordinates. */
export type LightOutside = (at: Point3, direction: Point3, share: Point3) => void;

/** Share of unpolarized light that a surface mirrors, by Fresnel's equations. */
export function mirroredShare(cosOutside: number, cosInside: number, index: number): number {
  const across = (cosOutside - index * cosInside) / (cosOutside + index * cosInside);
  const along = (index * cosOutside - cosInside) / (index * cosOutside + cosInside);
  return (across * across + along * along) / 2;
}

/**
 * Follows what enters a stone.
 *
 * @param entry where, in which direction from outside, and the surface's normal there (unit vectors, the stone's coordinates)
 * @param outside is told of all that comes in along the way
 * @returns the share that the surface mirrors, and what of the rest was followed to no end: red, green, blue
 */
export function followInside(
  { planes, width, gem }: StoneBody,
  { at, direction, normal }: Entry,
  outside: LightOutside,
): { readonly mirrored: number; readonly left: Point3 } {
  const { index, colour } = gem.look;
  const cosOut = Math.min(1, -dot(direction, normal));
  const cosIn = Math.sqrt(1 - (1 - cosOut * cosOut) / (index * index));
  const mirrored = mirroredShare(cosOut, cosIn, index);
  let way = bent(direction, normal, 1 / index, cosOut / index - cosIn);
  let here = at;
  let [red, green, blue] = [1 - mirrored, 1 - mirrored, 1 - mirrored];
  for (let bounce = 0; bounce < MOST_BOUNCES; bounce++) {
    const { plane, length } = nextPlane(planes, here, way);
    if (plane === undefined) break;
    here = [here[0] + length * way[0], here[1] + length * way[1], here[2] + length * way[2]];
    const widths = length / width;
    red *= colour[0] ** widths;
    green *= colour[1] ** widths;
    blue *= colour[2] ** widths;
    const inside = dot(way, plane);
    const sine = index * index * (1 - inside * inside);
    // Beyond the critical angle all of it stays.
    if (sine < 1) {
      const cosine = Math.sqrt(1 - sine);
      const stays = mirroredShare(cosine, inside, index);
      const leaves = 1 - stays;
      outside(here, bent(way, plane, index, cosine - index * inside), [red * leaves, green * leaves, blue * leaves]);
      red *= stays;
      green *= stays;
      blue *= stays;
      if (Math.max(red, green, blue) < LEAST_LEFT) break;
    }
    way = bent(way, plane, 1, -2 * inside);
  }
  return { mirrored, left: [red, green, blue] };
}

/** Where a ray enters. */
export interface Entry {
  readonly at: Point3;
  readonly direction: Point3;
  readonly normal: Point3;
}

/** The plane through which a ray from inside leaves first. */
function nextPlane(planes: StoneBody["planes"], at: Point3, way: Point3) {
  let length = Number.POSITIVE_INFINITY;
  let plane: Point3 | undefined;
  for (let i = 0; i < planes.length; i++) {
    const { normal, offset } = planes[i];
    const towards = normal[0] * way[0] + normal[1] * way[1] + normal[2] * way[2];
    if (towards <= LEVEL) continue;
    const reach = (offset - normal[0] * at[0] - normal[1] * at[1] - normal[2] * at[2]) / towards;
    if (reach >= length) continue;
    length = reach;
    plane = normal;
  }
  // A place on a facet may lie beyond its plane by rounding.
  return { plane, length: Math.max(0, length) };
}

/** A direction taken so often, and so much of the normal. */
function bent(direction: Point3, normal: Point3, share: number, turn: number): Point3 {
  return [
    share * direction[0] + turn * normal[0],
    share * direction[1] + turn * normal[1],
    share * direction[2] + turn * normal[2],
  ];
}

function dot(a: Point3, b: Point3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}
