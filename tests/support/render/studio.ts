/**
 * The studio the metal mirrors, and the metal's colour.
 *
 * Brightness by direction in the camera's frame: x to the right, y up, z towards the eye. Values are tuned by eye.
 */
import { dot, normalize, smoothstep, type Vec } from "./vector.js";

/** Reflectance of silver by red, green, blue, linear. From memory. */
export const SILVER: Vec = [0.965, 0.945, 0.915];

/** The backdrop's colour, sRGB 0 to 1. */
export const BACKDROP: Vec = [0.955, 0.953, 0.948];

const KEY = normalize([-0.62, 0.62, 0.5]);
const FILL = normalize([0.85, 0.3, 0.35]);
const RIM = normalize([0.35, 0.5, -0.8]);

/** Brightness seen in direction (x, y, z): light floor, a dark horizon, walls with upright strips, three soft boxes. */
export function studio(d: Vec): number {
  const [x, y, z] = d;
  const floor = 0.2 + 0.36 * smoothstep(-0.1, -0.9, y);
  const wall = 0.06 + 0.24 * smoothstep(0.02, 0.7, y);
  let light = floor + (wall - floor) * smoothstep(-0.2, 0.04, y);
  // Upright strips of light left and right of the camera and a lit wall far behind draw bands along a cylinder.
  const turn = Math.atan2(x, z);
  const level = Math.sqrt(1 - Math.min(1, y * y));
  light += level * 0.75 * smoothstep(0.42, 0.1, Math.abs(turn + 1.0));
  light += level * 0.42 * smoothstep(0.3, 0.06, Math.abs(turn - 1.25));
  light += level * 0.4 * smoothstep(2.3, 2.9, Math.abs(turn));
  light += (0.3 - 0.35 * x) * smoothstep(0.55, 0.9, y);
  light += 2.0 * smoothstep(0.74, 0.9, dot(d, KEY));
  light += 0.7 * smoothstep(0.84, 0.94, dot(d, FILL));
  light += 0.5 * smoothstep(0.8, 0.95, dot(d, RIM));
  // The dark room behind the camera keeps faces that look straight at it from washing out.
  return Math.max(0.02, light) * (1 - 0.6 * smoothstep(0.6, 1, z));
}

/** The same studio blurred over a hemisphere about n. */
export function softStudio(n: Vec): number {
  const lit = (light: Vec, strength: number) => strength * Math.max(0, dot(n, light)) ** 1.5;
  return 0.22 + 0.12 * n[1] + lit(KEY, 0.6) + lit(FILL, 0.22) + lit(RIM, 0.25);
}
