/**
 * From light to the numbers of a picture: a curve that leaves the dark and middle tones alone and rolls highlights off, then
 * the transfer function of sRGB (IEC 61966-2-1).
 */

/** Below this share of white the curve is straight; above it, light runs towards white without reaching it. */
const SHOULDER = 0.62;

/** Steps of the tables, and the light up to which they reach. */
const STEPS = 8192;
const MOST_LIGHT = 4;

/** Light to the share of white that the screen gives off. */
export function shoulder(light: number): number {
  if (light <= SHOULDER) return light;
  const room = 1 - SHOULDER;
  return 1 - room * Math.exp((SHOULDER - light) / room);
}

/** The share of white of the screen to the number that is stored, both 0 to 1. */
export function toSrgb(share: number): number {
  return share <= 0.0031308 ? 12.92 * share : 1.055 * share ** (1 / 2.4) - 0.055;
}

/** The number that is stored to the share of white of the screen, both 0 to 1. */
export function fromSrgb(value: number): number {
  return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
}

/** The shoulder as a table. */
export function shoulderTable(): (light: number) => number {
  const table = Float32Array.from({ length: STEPS + 1 }, (_, i) => shoulder((i * MOST_LIGHT) / STEPS));
  const scale = STEPS / MOST_LIGHT;
  return (light) => table[light >= MOST_LIGHT ? STEPS : (light * scale + 0.5) | 0];
}

/** Shares of white, 0 to 1, to bytes, as a table fine enough for the dark end. */
export function byteTable(): (share: number) => number {
  const size = 65_536;
  const table = Uint8Array.from({ length: size + 1 }, (_, i) => Math.round(255 * toSrgb(i / size)));
  return (share) => table[share >= 1 ? size : share <= 0 ? 0 : (share * size + 0.5) | 0];
}
