/**
 * From samples to pixels: light through the tone curve, averaged over each pixel, over the ground or over nothing.
 */
import { vec3 } from "gl-matrix";
import type { Camera } from "./camera.js";
import type { Ground } from "./ground.js";
import { BACK, NOTHING, type Seen } from "./raster.js";
import type { Shade } from "./shade.js";
import { byteTable, fromSrgb, shoulderTable } from "./tone.js";

/** The paper behind and beneath, sRGB 0 to 1: a little below white, so that highlights stand out. */
const BACKDROP = [0.957, 0.955, 0.95].map(fromSrgb);

/** So strong that it comes out full: a colour that metal and paper never take. */
const MAGENTA = [100, 0, 100] as const;

/** What marked triangles are painted in, and how much of it shows in the dark: shading tells shapes apart. */
const MARK = [0.85, 0.06, 0.04] as const;
const MARK_GLOW = 0.35;

export interface DevelopOptions {
  readonly seen: Seen;
  readonly camera: Camera;
  readonly supersample: number;
  readonly shade: Shade;
  /** One entry a triangle, 1 for those that are painted; undefined where none is. */
  readonly marked: Uint8Array | undefined;
  /** The shadow's map; without it the paper is plain. */
  readonly ground: Ground | undefined;
  /** Whether there is no paper at all. */
  readonly clear: boolean;
  readonly exposure: number;
}

/** Red, green, blue, alpha of each pixel, line by line from the top; colours are not multiplied by alpha. */
export function develop(options: DevelopOptions): Uint8Array {
  const { seen, camera, supersample, shade, marked, ground, clear, exposure } = options;
  const width = camera.width / supersample;
  const height = camera.height / supersample;
  const pixels = new Uint8Array(4 * width * height);
  const roll = shoulderTable();
  const toByte = byteTable();
  const paper = makePaper(camera, supersample, ground);
  const samples = supersample * supersample;
  const light = new Float32Array(3 * camera.width);
  // Red, green, blue and the number of samples that see the ring, of each pixel of a line.
  const sums = new Float32Array(4 * width);
  for (let y = 0; y < height; y++) {
    sums.fill(0);
    for (let j = 0; j < supersample; j++) addLine(y * supersample + j);
    for (let x = 0; x < width; x++) writePixel(x, y);
  }
  return pixels;

  /** Adds a line of samples to the sums. */
  function addLine(y: number): void {
    const { triangle } = seen;
    const start = y * camera.width;
    for (let x = 0; x < camera.width; ) {
      const t = triangle[start + x];
      const from = x;
      while (x < camera.width && triangle[start + x] === t) x++;
      if (t === NOTHING) continue;
      if (t === BACK) for (let i = from; i < x; i++) light.set(MAGENTA, 3 * i);
      else shade(t, from, x, y, light);
      if (t !== BACK && marked !== undefined && marked[t] === 1) for (let i = from; i < x; i++) paint(light, 3 * i);
      for (let i = from; i < x; i++) {
        const to = 4 * ((i / supersample) | 0);
        sums[to] += roll(light[3 * i] * exposure);
        sums[to + 1] += roll(light[3 * i + 1] * exposure);
        sums[to + 2] += roll(light[3 * i + 2] * exposure);
        sums[to + 3]++;
      }
    }
  }

  function writePixel(x: number, y: number): void {
    const from = 4 * x;
    const to = 4 * (y * width + x);
    const hit = sums[from + 3];
    if (clear && hit === 0) return;
    const bare = clear || hit === samples ? 0 : (samples - hit) * paper(x, y);
    const share = 1 / (clear ? hit : samples);
    pixels[to] = toByte((sums[from] + bare * BACKDROP[0]) * share);
    pixels[to + 1] = toByte((sums[from + 1] + bare * BACKDROP[1]) * share);
    pixels[to + 2] = toByte((sums[from + 2] + bare * BACKDROP[2]) * share);
    pixels[to + 3] = clear ? Math.round((255 * hit) / samples) : 255;
  }
}

function paint(light: Float32Array, at: number): void {
  const grey = (light[at] + light[at + 1] + light[at + 2]) / 3;
  for (let k = 0; k < 3; k++) light[at + k] = MARK[k] * (MARK_GLOW + (1 - MARK_GLOW) * Math.min(1, grey));
}

/** The share of light on the paper in the middle of a pixel. */
function makePaper(camera: Camera, supersample: number, ground: Ground | undefined): (x: number, y: number) => number {
  if (ground === undefined) return () => 1;
  const { eye, right, above, into, up } = camera;
  const focal = camera.focal / supersample;
  const left = camera.width / supersample / 2 - 0.5;
  const top = camera.height / supersample / 2 - 0.5;
  const drop = vec3.dot(eye as vec3, up as vec3) - ground.level;
  const fallAcross = vec3.dot(right as vec3, up as vec3);
  const fallUp = vec3.dot(above as vec3, up as vec3);
  const fallInto = vec3.dot(into as vec3, up as vec3);
  return (x, y) => {
    const px = (x - left) / focal;
    const py = (top - y) / focal;
    const fall = px * fallAcross + py * fallUp + fallInto;
    if (fall >= 0) return 1;
    const reach = -drop / fall;
    return ground.lightAt(
      eye[0] + reach * (px * right[0] + py * above[0] + into[0]),
      eye[1] + reach * (px * right[1] + py * above[1] + into[1]),
      eye[2] + reach * (px * right[2] + py * above[2] + into[2]),
    );
  };
}
