/**
 * The soft shadow on the ground.
 *
 * The mesh is cut into slices by height. A light of some size throws each slice on the ground shifted and blurred in
 * proportion to its height; what lights shine past all slices is the product of what each lets through.
 */
import { vec3 } from "gl-matrix";
import type { Point3 } from "../../base/math/point.js";
import { smoothStep } from "../../base/math/smooth-step.js";
import type { Mesh } from "../../mesh/mesh.js";
import type { Camera } from "./camera.js";
import { strew } from "./strew.js";

/** Cells along the side of the map, and its side in bounding radii: the shadow has faded beyond. */
const CELLS = 128;
const SIDE = 5;

/** Slices of the mesh, thin ones at the ground, where their edges are sharp. */
const SLICES = 12;
const THICKENING = 2;

/** Lights over the ground: where they stand (right and towards the camera over up), how wide (over up), how strong. */
const LIGHTS = [
  { shift: [-0.55, 0.1], spread: 0.34, share: 0.42 },
  { shift: [0, 0], spread: 1.15, share: 0.58 },
] as const;

/** The share of its light that the darkest ground keeps: paper and metal light each other. */
const LEAST = 0.22;

/** A blur passes a box along each axis this many times, which comes near a bell. */
const PASSES = 2;

export interface Ground {
  /** Height along the upright axis, mm. */
  readonly level: number;
  /** Share of the light that reaches the ground below a point, 0 to 1. */
  readonly lightAt: (x: number, y: number, z: number) => number;
}

interface Ball {
  readonly centre: Point3;
  /** mm */
  readonly radius: number;
}

/** The ground beneath the mesh's lowest point. */
export function makeGround(mesh: Mesh, { up, right, towards }: Camera, { centre, radius }: Ball): Ground {
  const cell = (SIDE * radius) / CELLS;
  const level = lowest(mesh, up);
  const [u0, v0] = [right, towards].map((axis) => vec3.dot(centre as vec3, axis as vec3) - (SIDE * radius) / 2);
  const slices = sliceUp(mesh, { up, right, towards }, { u0, v0, cell, level, top: 2 * radius });
  const light = new Float32Array(CELLS * CELLS);
  for (const { shift, spread, share } of LIGHTS) {
    const past = new Float32Array(CELLS * CELLS).fill(1);
    slices.forEach(({ cover, height }) => {
      if (cover === undefined) return;
      const h = height / cell;
      const shadow = blurred(shifted(cover, -shift[0] * h, -shift[1] * h), spread * h);
      for (let i = 0; i < past.length; i++) past[i] *= 1 - shadow[i];
    });
    for (let i = 0; i < light.length; i++) light[i] += share * past[i];
  }
  soften(light);
  const lightAt = (x: number, y: number, z: number): number => {
    const u = (x * right[0] + y * right[1] + z * right[2] - u0) / cell - 0.5;
    const v = (x * towards[0] + y * towards[1] + z * towards[2] - v0) / cell - 0.5;
    if (!(u >= 0 && v >= 0 && u < CELLS - 1 && v < CELLS - 1)) return 1;
    const i = u | 0;
    const j = v | 0;
    const fu = u - i;
    const fv = v - j;
    const at = j * CELLS + i;
    const near = light[at] * (1 - fu) + light[at + 1] * fu;
    const far = light[at + CELLS] * (1 - fu) + light[at + CELLS + 1] * fu;
    return near * (1 - fv) + far * fv;
  };
  return { level, lightAt };
}

function lowest({ positions }: Mesh, up: Point3): number {
  let level = Number.POSITIVE_INFINITY;
  for (let i = 0; i < positions.length; i += 3) {
    const height = positions[i] * up[0] + positions[i + 1] * up[1] + positions[i + 2] * up[2];
    if (height < level) level = height;
  }
  return level;
}

type Axes = Pick<Camera, "up" | "right" | "towards">;

interface Frame {
  readonly u0: number;
  readonly v0: number;
  readonly cell: number;
  readonly level: number;
  /** Height of the topmost slice, mm. */
  readonly top: number;
}

/** Which cells each slice covers, 0 to 1, and its middle height over the ground, mm; no cover where it is empty. */
function sliceUp(mesh: Mesh, { up, right, towards }: Axes, { u0, v0, cell, level, top }: Frame) {
  const covers: (Float32Array | undefined)[] = Array.from({ length: SLICES }, () => undefined);
  strew(mesh, cell, (x, y, z) => {
    const u = ((x * right[0] + y * right[1] + z * right[2] - u0) / cell) | 0;
    const v = ((x * towards[0] + y * towards[1] + z * towards[2] - v0) / cell) | 0;
    const share = (x * up[0] + y * up[1] + z * up[2] - level) / top;
    const slice = Math.min(SLICES - 1, (SLICES * share ** (1 / THICKENING)) | 0);
    if (u < 0 || v < 0 || u >= CELLS || v >= CELLS) return;
    const cover = covers[slice] ?? new Float32Array(CELLS * CELLS);
    covers[slice] = cover;
    cover[v * CELLS + u] = 1;
  });
  return covers.map((cover, i) => ({ cover, height: top * ((i + 0.5) / SLICES) ** THICKENING }));
}

/** The map moved by whole and part cells. */
function shifted(map: Float32Array, du: number, dv: number): Float32Array {
  const result = new Float32Array(map.length);
  const [iu, iv] = [Math.floor(du), Math.floor(dv)];
  const [fu, fv] = [du - iu, dv - iv];
  const at = (i: number, j: number) => (i < 0 || j < 0 || i >= CELLS || j >= CELLS ? 0 : map[j * CELLS + i]);
  for (let j = 0; j < CELLS; j++) {
    for (let i = 0; i < CELLS; i++) {
      const [p, q] = [i - iu, j - iv];
      result[j * CELLS + i] =
        (1 - fv) * ((1 - fu) * at(p, q) + fu * at(p - 1, q)) + fv * ((1 - fu) * at(p, q - 1) + fu * at(p - 1, q - 1));
    }
  }
  return result;
}

/** A blur of a radius in cells, by boxes of whole and part cells. */
function blurred(map: Float32Array, radius: number): Float32Array {
  // n boxes of half width h spread by h · √(n / 3) each way; a bell of half the radius is wanted.
  const half = Math.max(0.9, (radius / 2) * Math.sqrt(3 / PASSES));
  let from = map;
  for (let pass = 0; pass < PASSES; pass++) {
    from = boxed(from, half, 1, CELLS);
    from = boxed(from, half, CELLS, 1);
  }
  return from;
}

/** Mean over `half` cells either side along lines whose cells lie `step` apart. */
function boxed(map: Float32Array, half: number, step: number, line: number): Float32Array {
  const result = new Float32Array(map.length);
  const sums = new Float64Array(CELLS + 1);
  const upTo = (place: number) => {
    const inside = Math.min(CELLS, Math.max(0, place));
    const whole = Math.min(CELLS - 1, inside | 0);
    return sums[whole] + (inside - whole) * (sums[whole + 1] - sums[whole]);
  };
  for (let start = 0; start < CELLS; start++) {
    const first = start * line;
    for (let i = 0; i < CELLS; i++) sums[i + 1] = sums[i] + map[first + i * step];
    for (let i = 0; i < CELLS; i++) {
      result[first + i * step] = (upTo(i + 0.5 + half) - upTo(i + 0.5 - half)) / (2 * half);
    }
  }
  return result;
}

/** Keeps the shadow from growing black, and lets it run out before the map ends, so that its border does not show. */
function soften(light: Float32Array): void {
  for (let j = 0; j < CELLS; j++) {
    for (let i = 0; i < CELLS; i++) {
      const away = Math.hypot(i + 0.5 - CELLS / 2, j + 0.5 - CELLS / 2) / (CELLS / 2);
      const keep = smoothStep((0.98 - away) / 0.4);
      light[j * CELLS + i] = 1 - (1 - LEAST) * (1 - light[j * CELLS + i]) * keep;
    }
  }
}
