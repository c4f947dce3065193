/**
 * The studio's light by direction, sharp and in steps of blur, as square maps.
 *
 * Directions are laid out by the octahedral map (Z. H. Cigolle et al., A survey of efficient representations for
 * independent unit vectors, J. Computer Graphics Techniques 3(2), 2014). Blurred maps average the sharp one over a lobe
 * cosⁿ about each direction.
 */
import type { Point3 } from "../../base/math/point.js";

/** Texels along each map's side, without its border of one, and the exponent of its lobe; the first is sharp. */
const LEVELS: readonly { readonly size: number; readonly exponent: number }[] = [
  { size: 256, exponent: Number.POSITIVE_INFINITY },
  { size: 64, exponent: 260 },
  { size: 40, exponent: 40 },
  { size: 24, exponent: 7 },
  { size: 16, exponent: 1 },
];

/** Rays about a direction that a blurred texel averages. */
const RAYS = 48;

/** The level that gathers light over the whole hemisphere, as matt surfaces do. */
export const MATT = LEVELS.length - 1;

export interface LightMap {
  /** Red, green, blue of each texel of each level, line by line, with a border of one texel. */
  readonly levels: readonly Float32Array[];
  /** Texels along a level's side, without the border. */
  readonly sizes: readonly number[];
}

/** Radiance in a unit direction, written to `out`. */
export type Light = (x: number, y: number, z: number, out: Float64Array) => void;

export function makeLightMap(light: Light): LightMap {
  const sizes = LEVELS.map(({ size }) => size);
  const sharp = fillLevel(sizes[0], light);
  const map: LightMap = { levels: [sharp], sizes };
  const blurred = LEVELS.slice(1).map(({ size, exponent }) => fillLevel(size, overLobe(map, exponent)));
  return { levels: [sharp, ...blurred], sizes };
}

/** Adds `share` of the light of one level in a unit direction to three numbers of `out`. */
// biome-ignore lint/complexity/useMaxParams: numbers, since this is called for every sample and objects would be made each time
export function addLight(
  { levels, sizes }: LightMap,
  level: number,
  x: number,
  y: number,
  z: number,
  share: number,
  out: Float64Array,
): void {
  const size = sizes[level];
  const texels = levels[level];
  const scale = 1 / (Math.abs(x) + Math.abs(y) + Math.abs(z));
  let u = x * scale;
  let v = z * scale;
  if (y < 0) {
    const folded = (1 - Math.abs(v)) * (u < 0 ? -1 : 1);
    v = (1 - Math.abs(u)) * (v < 0 ? -1 : 1);
    u = folded;
  }
  // One texel of border stands before the first.
  const across = (u * 0.5 + 0.5) * size + 0.5;
  const down = (v * 0.5 + 0.5) * size + 0.5;
  const i = across | 0;
  const j = down | 0;
  const fu = across - i;
  const fv = down - j;
  const line = 3 * (size + 2);
  const at = j * line + 3 * i;
  const a = (1 - fu) * (1 - fv) * share;
  const b = fu * (1 - fv) * share;
  const c = (1 - fu) * fv * share;
  const d = fu * fv * share;
  out[0] += a * texels[at] + b * texels[at + 3] + c * texels[at + line] + d * texels[at + line + 3];
  out[1] += a * texels[at + 1] + b * texels[at + 4] + c * texels[at + line + 1] + d * texels[at + line + 4];
  out[2] += a * texels[at + 2] + b * texels[at + 5] + c * texels[at + line + 2] + d * texels[at + line + 5];
}

/** The unit direction of a place on the map, 0 to 1 along both sides. */
function directionOf(across: number, down: number): Point3 {
  let u = 2 * across - 1;
  let v = 2 * down - 1;
  const y = 1 - Math.abs(u) - Math.abs(v);
  if (y < 0) {
    const folded = (1 - Math.abs(v)) * (u < 0 ? -1 : 1);
    v = (1 - Math.abs(u)) * (v < 0 ? -1 : 1);
    u = folded;
  }
  const length = Math.hypot(u, y, v);
  return [u / length, y / length, v / length];
}

function fillLevel(size: number, light: Light): Float32Array {
  const line = size + 2;
  const texels = new Float32Array(3 * line * line);
  const out = new Float64Array(3);
  for (let j = 0; j < size; j++) {
    for (let i = 0; i < size; i++) {
      const [x, y, z] = directionOf((i + 0.5) / size, (j + 0.5) / size);
      light(x, y, z, out);
      texels.set(out, 3 * ((j + 1) * line + i + 1));
    }
  }
  // Beyond each side the map goes on with that side run backwards; the corners are one direction.
  const copy = (to: number, from: number) => texels.copyWithin(3 * to, 3 * from, 3 * from + 3);
  for (let i = 1; i <= size; i++) {
    const back = size + 1 - i;
    copy(i, line + back);
    copy((size + 1) * line + i, size * line + back);
    copy(i * line, back * line + 1);
    copy(i * line + size + 1, back * line + size);
  }
  for (const [i, j] of [
    [0, 0],
    [size + 1, 0],
    [0, size + 1],
    [size + 1, size + 1],
  ]) {
    copy(j * line + i, Math.min(size, Math.max(1, j)) * line + Math.min(size, Math.max(1, i)));
  }
  return texels;
}

/** The mean of the sharp map over a lobe, by rays on a spiral that fall as thick as the lobe is strong. */
function overLobe(map: LightMap, exponent: number): Light {
  const golden = Math.PI * (3 - Math.sqrt(5));
  const rays = Array.from({ length: RAYS }, (_, i) => {
    const z = (1 - (i + 0.5) / RAYS) ** (1 / (exponent + 1));
    const level = Math.sqrt(1 - z * z);
    return [level * Math.cos(i * golden), level * Math.sin(i * golden), z] as const;
  });
  return (x, y, z, out) => {
    // Two directions square to the lobe's own (J. R. Frisvad, 2012, in the form that has no pole at z = 1).
    const sign = z < 0 ? -1 : 1;
    const a = -1 / (sign + z);
    const b = x * y * a;
    out.fill(0);
    for (const [p, q, r] of rays) {
      addLight(
        map,
        0,
        p * (1 + sign * x * x * a) + q * b + r * x,
        p * sign * b + q * (sign + y * y * a) + r * y,
        -p * sign * x - q * y + r * z,
        1 / RAYS,
        out,
      );
    }
  };
}
