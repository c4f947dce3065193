/**
 * The light that a sample sends to the eye.
 */
import type { Look } from "../../measure/alloys/look.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Camera } from "./camera.js";
import { addLight, type LightMap, MATT } from "./light-map.js";
import { MIRRORED } from "./mirrored.js";

/** Smooth normals turn away from the eye at outlines: they are brought back to this cosine. */
const LEAST_FACING = 0.01;

/** Reflectance of clear wax and resin seen straight on: ((n − 1) / (n + 1))² of a refractive index of 1.5. */
const CLEAR = 0.04;

/** The blur of what a matt body's shine mirrors. */
const SHINE_BLUR = 1;

/** From the sharp level on, each level of blur stands for a spread this many times wider, from this spread in radians on. */
const SPREAD = { first: 0.035, step: 2.6 } as const;

/** Where the ground begins beneath the horizon, by the sine of the angle. */
const HORIZON = 0.16;

export interface ShadeOptions {
  readonly mesh: Mesh;
  readonly camera: Camera;
  readonly supersample: number;
  readonly projected: Float64Array;
  /** Of the corners. */
  readonly normals: Float32Array;
  readonly map: LightMap;
  readonly look: Look;
  /** Level of blur of the surface's own finish: 0 is polished. */
  readonly blur: number;
  /** By pixel. */
  readonly open: Float32Array;
  readonly mirrored: Float32Array;
}

/**
 * Writes the light of the samples `from` to `to` (that one left out) of a line, which all see one triangle: red, green, blue
 * of sample x at 3x.
 */
export type Shade = (triangle: number, from: number, to: number, y: number, line: Float32Array) => void;

// biome-ignore lint/complexity/noExcessiveLinesPerFunction: one loop whose numbers stay in variables of their own: in arrays they take three times as long
export function makeShade(options: ShadeOptions): Shade {
  const { mesh, camera, supersample, projected, normals, map, look, blur, open, mirrored } = options;
  const { triangles } = mesh;
  const { right, above, into, up, towards, focal, width, height } = camera;
  const spread = spreadOf(triangles, projected, normals, blur);
  const out = new Float64Array(3);
  const [red, green, blue] = look.colour;
  const { metal } = look;
  const last = map.levels.length - 2;
  const pixels = width / supersample;

  // biome-ignore lint/complexity/noExcessiveLinesPerFunction: the same loop
  return (triangle, from, to, sampleY, line) => {
    const corner = 3 * triangle;
    const a = 3 * triangles[corner];
    const b = 3 * triangles[corner + 1];
    const c = 3 * triangles[corner + 2];
    const n = 9 * triangle;
    const level = metal ? spread[triangle] : SHINE_BLUR;
    const whole = Math.min(last, level | 0);
    const part = whole === last ? 0 : level - whole;
    // Shares of the corners as in `weigh`: linear along the line, each times one over its depth.
    const ay = projected[a + 1] - sampleY;
    const by = projected[b + 1] - sampleY;
    const cy = projected[c + 1] - sampleY;
    const za = -projected[a + 2];
    const zb = -projected[b + 2];
    const zc = -projected[c + 2];
    const stepA = (by - cy) * za;
    const stepB = (cy - ay) * zb;
    const stepC = (ay - by) * zc;
    const zeroA = (projected[b] * cy - by * projected[c]) * za;
    const zeroB = (projected[c] * ay - cy * projected[a]) * zb;
    const zeroC = (projected[a] * by - ay * projected[b]) * zc;
    const sy = (height / 2 - 0.5 - sampleY) / focal;
    const first = ((sampleY / supersample) | 0) * pixels;
    for (let sampleX = from; sampleX < to; sampleX++) {
      const pixel = first + ((sampleX / supersample) | 0);
      const sa = Math.max(0, zeroA + sampleX * stepA);
      const sb = Math.max(0, zeroB + sampleX * stepB);
      const sc = Math.max(0, zeroC + sampleX * stepC);
      // Their sum needs no mending: what comes of them is brought to unit length, unless it is nothing.
      const even = sa + sb + sc > 0 ? 0 : 1;
      const wa = sa + even;
      const wb = sb + even;
      const wc = sc + even;
      let nx = wa * normals[n] + wb * normals[n + 3] + wc * normals[n + 6];
      let ny = wa * normals[n + 1] + wb * normals[n + 4] + wc * normals[n + 7];
      let nz = wa * normals[n + 2] + wb * normals[n + 5] + wc * normals[n + 8];
      const shorten = 1 / (Math.sqrt(nx * nx + ny * ny + nz * nz) || 1);
      nx *= shorten;
      ny *= shorten;
      nz *= shorten;
      const sx = (sampleX + 0.5 - width / 2) / focal;
      const scale = 1 / Math.sqrt(sx * sx + sy * sy + 1);
      const vx = (sx * right[0] + sy * above[0] + into[0]) * scale;
      const vy = (sx * right[1] + sy * above[1] + into[1]) * scale;
      const vz = (sx * right[2] + sy * above[2] + into[2]) * scale;
      let facing = -(vx * nx + vy * ny + vz * nz);
      if (facing < LEAST_FACING) {
        const more = LEAST_FACING - facing;
        nx -= vx * more;
        ny -= vy * more;
        nz -= vz * more;
        facing = LEAST_FACING;
      }
      const rx = vx + 2 * facing * nx;
      const ry = vy + 2 * facing * ny;
      const rz = vz + 2 * facing * nz;
      // In the studio's axes.
      const lx = rx * right[0] + ry * right[1] + rz * right[2];
      const ly = rx * up[0] + ry * up[1] + rz * up[2];
      const lz = rx * towards[0] + ry * towards[1] + rz * towards[2];
      out[0] = 0;
      out[1] = 0;
      out[2] = 0;
      if (part < 0.1) addLight(map, whole, lx, ly, lz, 1, out);
      else {
        addLight(map, whole, lx, ly, lz, 1 - part, out);
        addLight(map, whole + 1, lx, ly, lz, part, out);
      }
      const m = MIRRORED * pixel;
      const self = mirrored[m];
      const down = ly < 0 ? Math.min(1, -ly / HORIZON) : 0;
      const sky = (1 - self) * (1 - down * (1 - mirrored[m + 4]));
      const gap = open[pixel];
      const graze = (1 - facing) * (1 - facing);
      const fresnel = graze * graze * (1 - facing);
      if (metal) {
        // Hollows mirror each other: darker, and deeper in colour with every bounce.
        const deep = gap * gap;
        const r = red + (1 - red) * fresnel;
        const g = green + (1 - green) * fresnel;
        const b = blue + (1 - blue) * fresnel;
        out[0] = r * (out[0] * sky + self * r * mirrored[m + 1]) * (deep + (1 - deep) * r * 0.3);
        out[1] = g * (out[1] * sky + self * g * mirrored[m + 2]) * (deep + (1 - deep) * g * 0.3);
        out[2] = b * (out[2] * sky + self * b * mirrored[m + 3]) * (deep + (1 - deep) * b * 0.3);
      } else {
        const shine = (CLEAR + (1 - CLEAR) * fresnel) * gap * sky;
        const shineRed = out[0] * shine;
        const shineGreen = out[1] * shine;
        const shineBlue = out[2] * shine;
        out[0] = 0;
        out[1] = 0;
        out[2] = 0;
        addLight(
          map,
          MATT,
          nx * right[0] + ny * right[1] + nz * right[2],
          nx * up[0] + ny * up[1] + nz * up[2],
          nx * towards[0] + ny * towards[1] + nz * towards[2],
          gap,
          out,
        );
        out[0] = out[0] * red + shineRed;
        out[1] = out[1] * green + shineGreen;
        out[2] = out[2] * blue + shineBlue;
      }
      line[3 * sampleX] = out[0];
      line[3 * sampleX + 1] = out[1];
      line[3 * sampleX + 2] = out[2];
    }
  };
}

/** The level of blur that each triangle asks for: strongly bent ones see much of the studio in one sample. */
function spreadOf(triangles: Uint32Array, projected: Float64Array, normals: Float32Array, blur: number): Float32Array {
  const levels = new Float32Array(triangles.length / 3);
  const scale = 1 / Math.log(SPREAD.step);
  for (let t = 0; t < levels.length; t++) {
    const n = 9 * t;
    let bend = 0;
    for (let k = 0; k < 3; k++) {
      const [p, q, r] = [normals[n + k], normals[n + 3 + k], normals[n + 6 + k]];
      bend += (p - q) ** 2 + (q - r) ** 2 + (r - p) ** 2;
    }
    if (bend === 0) {
      levels[t] = blur;
      continue;
    }
    const [a, b, c] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    let length = 0;
    for (let k = 0; k < 2; k++) {
      const [p, q, r] = [projected[a + k], projected[b + k], projected[c + k]];
      length += (p - q) ** 2 + (q - r) ** 2 + (r - p) ** 2;
    }
    // A mirror turns what it shows by twice its own turn.
    const turn = 2 * Math.sqrt(bend / length);
    levels[t] = Math.max(blur, Math.min(3, Math.log(turn / SPREAD.first) * scale));
  }
  return levels;
}
