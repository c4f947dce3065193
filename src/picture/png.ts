/**
 * A picture as the bytes of a PNG file, 8 bits a channel, without alpha where all of it is opaque.
 */
import { encode } from "fast-png";
import type { Picture } from "./picture.js";

export function encodePng({ width, height, pixels }: Picture): Uint8Array {
  const opaque = pixels.every((value, i) => i % 4 !== 3 || value === 255);
  const data = opaque ? pixels.filter((_, i) => i % 4 !== 3) : pixels;
  return encode({ width, height, data, depth: 8, channels: opaque ? 3 : 4 });
}
