/**
 * What each pixel's reflection meets besides the studio: the mesh itself, and the shaded ground.
 */
import type { Camera } from "./camera.js";
import { type EchoGrid, followRay } from "./echo.js";
import type { Ground } from "./ground.js";
import { addLight, type LightMap } from "./light-map.js";
import type { PixelView } from "./pixel-view.js";

/** Numbers a pixel: the share of the reflection that the mesh itself takes up, the light there, the light on the ground. */
export const MIRRORED = 5;

/** The level of blur in which the light on mirrored metal is looked up. */
const SECOND_BLUR = 2;

/** Share of that light which is left: it is closed in itself. */
const SECOND_SHARE = 0.8;

/** Neighbours whose normals differ by less, as a cosine, and depths by less, over the depth, have alike reflections. */
const LEAST_ALIKE = 0.975;
const MOST_APART = 0.002;

/**
 * For each pixel: the share of its reflection that the mesh itself takes up, the light there (red, green, blue, before the
 * metal's colour), and the share of light on the ground that it meets. Where the surface is smooth every second pixel of every
 * second line is worked out, the others lie between.
 */
export function mirrored(surface: PixelView, camera: Camera, others: Others): Float32Array {
  const { width, height, depth } = surface;
  const result = new Float32Array(MIRRORED * width * height);
  const trace = makeTracer(surface, camera, others, result);
  for (let y = 0; y < height; y += 2) {
    for (let x = 0; x < width; x += 2) if (depth[y * width + x] !== 0) trace(x, y);
  }
  // The pixels between two of a line, then those between lines.
  for (let y = 0; y < height; y += 2) fillLine(surface, result, trace, { y, start: 1, step: 2, stride: 1 });
  for (let y = 1; y < height; y += 2) fillLine(surface, result, trace, { y, start: 0, step: 1, stride: width });
  return result;
}

/** What there is to be mirrored. */
export interface Others {
  readonly grid: EchoGrid;
  readonly ground: Ground | undefined;
  readonly map: LightMap;
}

/** Pixels of a line that lie between two that are traced. */
interface Between {
  readonly y: number;
  /** The first of them, and from one to the next. */
  readonly start: number;
  readonly step: number;
  /** Pixels to the two that each lies between: 1 along the line, the width across it. */
  readonly stride: number;
}

function fillLine(
  { width, height, depth, normal }: PixelView,
  result: Float32Array,
  trace: (x: number, y: number) => void,
  { y, start, step, stride }: Between,
): void {
  const inside = stride === 1 || y + 1 < height;
  for (let x = start; x < width; x += step) {
    const at = y * width + x;
    if (depth[at] === 0) continue;
    const a = at - stride;
    const b = at + stride;
    if (inside && (stride > 1 || x + 1 < width) && depth[a] !== 0 && depth[b] !== 0) {
      const alike =
        normal[3 * a] * normal[3 * b] + normal[3 * a + 1] * normal[3 * b + 1] + normal[3 * a + 2] * normal[3 * b + 2];
      const own =
        normal[3 * a] * normal[3 * at] +
        normal[3 * a + 1] * normal[3 * at + 1] +
        normal[3 * a + 2] * normal[3 * at + 2];
      const apart = Math.max(Math.abs(depth[a] - depth[b]), Math.abs(depth[a] - depth[at]));
      if (alike > LEAST_ALIKE && own > LEAST_ALIKE && apart < MOST_APART * depth[at]) {
        for (let k = 0; k < MIRRORED; k++) {
          result[MIRRORED * at + k] = (result[MIRRORED * a + k] + result[MIRRORED * b + k]) / 2;
        }
        continue;
      }
    }
    trace(x, y);
  }
}

/** Works out one pixel. */
function makeTracer(surface: PixelView, camera: Camera, { grid, ground, map }: Others, result: Float32Array) {
  const { width, height, depth, normal, focal } = surface;
  const { eye, right, above, into, up, towards } = camera;
  const caught = new Float64Array(4);
  const light = new Float64Array(3);
  return (pixelX: number, pixelY: number): void => {
    const at = pixelY * width + pixelX;
    const own = depth[at];
    const sx = (pixelX + 0.5 - width / 2) / focal;
    const sy = (height / 2 - 0.5 - pixelY) / focal;
    // Along the screen's axes.
    const length = 1 / Math.sqrt(sx * sx + sy * sy + 1);
    const a = normal[3 * at];
    const b = normal[3 * at + 1];
    const c = normal[3 * at + 2];
    const twice = 2 * Math.min(-0.02, (sx * a + sy * b + c) * length);
    const ra = sx * length - twice * a;
    const rb = sy * length - twice * b;
    const rc = length - twice * c;
    // In space.
    const x = eye[0] + own * (sx * right[0] + sy * above[0] + into[0]);
    const y = eye[1] + own * (sx * right[1] + sy * above[1] + into[1]);
    const z = eye[2] + own * (sx * right[2] + sy * above[2] + into[2]);
    const dx = ra * right[0] + rb * above[0] + rc * into[0];
    const dy = ra * right[1] + rb * above[1] + rc * into[1];
    const dz = ra * right[2] + rb * above[2] + rc * into[2];
    const nx = a * right[0] + b * above[0] + c * into[0];
    const ny = a * right[1] + b * above[1] + c * into[1];
    const nz = a * right[2] + b * above[2] + c * into[2];
    followRay(grid, x, y, z, dx, dy, dz, nx, ny, nz, caught);
    const to = MIRRORED * at;
    result[to] = caught[0];
    if (caught[0] > 0) {
      const scale = 1 / (Math.sqrt(caught[1] ** 2 + caught[2] ** 2 + caught[3] ** 2) || 1);
      const mx = caught[1] * scale;
      const my = caught[2] * scale;
      const mz = caught[3] * scale;
      const back = -2 * (dx * mx + dy * my + dz * mz);
      const ex = dx + back * mx;
      const ey = dy + back * my;
      const ez = dz + back * mz;
      light[0] = 0;
      light[1] = 0;
      light[2] = 0;
      addLight(
        map,
        SECOND_BLUR,
        ex * right[0] + ey * right[1] + ez * right[2],
        ex * up[0] + ey * up[1] + ez * up[2],
        ex * towards[0] + ey * towards[1] + ez * towards[2],
        SECOND_SHARE,
        light,
      );
      result[to + 1] = light[0];
      result[to + 2] = light[1];
      result[to + 3] = light[2];
    }
    result[to + 4] = 1;
    const fall = dx * up[0] + dy * up[1] + dz * up[2];
    if (ground !== undefined && fall < 0) {
      const reach = (ground.level - (x * up[0] + y * up[1] + z * up[2])) / fall;
      result[to + 4] = ground.lightAt(x + reach * dx, y + reach * dy, z + reach * dz);
    }
  };
}
