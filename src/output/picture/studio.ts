/**
 * The studio that metal mirrors: a dim room, a white wall behind, soft boxes, a white ground.
 *
 * Radiance by direction in the studio's axes: x to the right, y up, z towards the camera; 1 is white paper in full light.
 * Places and strengths are set by eye.
 */
import type { Point3 } from "../../base/math/point.js";
import { smoothStep } from "../../base/math/smooth-step.js";

/** A lit rectangle, seen as flat from the middle of the studio. */
interface SoftBox {
  /** Unit vectors: to its middle, along its width and its height. */
  readonly middle: Point3;
  readonly across: Point3;
  readonly upwards: Point3;
  /** Half width and half height over its distance. */
  readonly half: readonly [number, number];
  /** How far its edge fades, over its distance. */
  readonly fade: number;
  /** Radiance at its middle, red, green, blue, and the share of it that is left at its rim. */
  readonly light: Point3;
  readonly rim: number;
}

/** Lights in front are warm by a hair, the sky of the room cool. */
const BOXES: readonly SoftBox[] = [
  // The key: large, left, high, in front.
  softBox([-0.75, 0.62, 0.35], [0.46, 0.4], 0.12, [3.4, 3.33, 3.2], 0.5),
  // A tall strip at the right draws a line along every edge.
  softBox([0.95, 0.2, 0.05], [0.13, 0.8], 0.05, [2.6, 2.6, 2.62], 0.75),
  // A narrow strip at the left, behind.
  softBox([-0.86, 0.16, -0.5], [0.1, 0.7], 0.05, [1.8, 1.8, 1.82], 0.75),
  // Overhead, a little behind.
  softBox([0.15, 0.93, -0.35], [0.55, 0.34], 0.14, [2.3, 2.28, 2.24], 0.65),
];

/** The ground's radiance where nothing shades it. */
export const GROUND_LIGHT: Point3 = [0.56, 0.553, 0.54];

/** Writes the radiance seen from the middle of the studio in a unit direction. */
export function studioLight(x: number, y: number, z: number, out: Float64Array): void {
  // Walls lit from above and the left; the photographer's black card stands low at the right of the camera.
  const height = smoothStep((y + 0.1) / 0.9);
  const behind = smoothStep((-z - 0.05) / 0.75);
  const front = smoothStep((z - 0.35) / 0.5);
  const slope = smoothStep((0.55 * y - 0.75 * x + 0.32) / 0.72);
  const wall = (0.1 + 0.1 * height + behind * (0.62 - 0.3 * height)) * (1 - front) + front * (0.05 + 0.62 * slope);
  // The ground fades into the wall at the horizon.
  const ground = smoothStep(-y / 0.16);
  out[0] = wall + ground * (GROUND_LIGHT[0] - wall);
  out[1] = wall + ground * (GROUND_LIGHT[1] - wall);
  out[2] = wall * 1.02 + ground * (GROUND_LIGHT[2] - wall);
  for (const { middle, across, upwards, half, fade, light, rim } of BOXES) {
    const depth = x * middle[0] + y * middle[1] + z * middle[2];
    if (depth <= 0.05) continue;
    const u = Math.abs(x * across[0] + y * across[1] + z * across[2]) / depth;
    const v = Math.abs(x * upwards[0] + y * upwards[1] + z * upwards[2]) / depth;
    const lit = smoothStep((half[0] - u) / fade + 0.5) * smoothStep((half[1] - v) / fade + 0.5);
    if (lit === 0) continue;
    const away = Math.min(1, (u / half[0]) ** 2 * 0.5 + (v / half[1]) ** 2 * 0.5);
    const share = lit * (1 - (1 - rim) * away);
    for (let k = 0; k < 3; k++) out[k] = out[k] * (1 - lit) + light[k] * share;
  }
}

function softBox(
  [x, y, z]: Point3,
  half: readonly [number, number],
  fade: number,
  light: Point3,
  rim: number,
): SoftBox {
  const length = Math.hypot(x, y, z);
  const middle: Point3 = [x / length, y / length, z / length];
  const level = Math.hypot(middle[0], middle[2]);
  const across: Point3 = [middle[2] / level, 0, -middle[0] / level];
  const upwards: Point3 = [
    middle[1] * across[2] - middle[2] * across[1],
    middle[2] * across[0] - middle[0] * across[2],
    middle[0] * across[1] - middle[1] * across[0],
  ];
  return { middle, across, upwards, half, fade, light, rim };
}
