/** PNG files for tests: by the library's encoder, and byte by byte by the standard's chapters 5 and 11. */
import { deflateSync } from "node:zlib";
import { encode } from "fast-png";

/** A grey image whose pixel at (x, y), each from 0 to 1 over the image and y downward, has the given brightness. */
export function greyPng(
  width: number,
  height: number,
  brightness: (x: number, y: number) => number,
  depth: 8 | 16 = 16,
): Uint8Array {
  const white = 2 ** depth - 1;
  const data = depth === 16 ? new Uint16Array(width * height) : new Uint8Array(width * height);
  for (let i = 0; i < data.length; i++) {
    data[i] = Math.round(white * brightness(((i % width) + 0.5) / width, (Math.floor(i / width) + 0.5) / height));
  }
  return encode({ width, height, data, depth, channels: 1 });
}

export interface RawPng {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  /** Colour type by the standard's number. */
  readonly colour: number;
  readonly interlace?: number;
  readonly compression?: number;
  /** Between header and pixels. */
  readonly before?: readonly (readonly [name: string, data: Uint8Array])[];
  /** Lines with their filter bytes, not yet compressed. */
  readonly lines: Uint8Array;
  /** In place of the compressed lines. */
  readonly packed?: Uint8Array;
}

/** A file of the given pieces; nothing is checked. */
export function rawPng(png: RawPng): Uint8Array {
  const { width, height, depth, colour, interlace = 0, compression = 0, before = [], lines } = png;
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([depth, colour, compression, 0, interlace], 8);
  const packed = png.packed ?? deflateSync(lines);
  return join([
    Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    chunk("IHDR", header),
    ...before.map(([name, data]) => chunk(name, data)),
    chunk("IDAT", packed),
    chunk("IEND", new Uint8Array(0)),
  ]);
}

/** A piece with its length and its checksum. */
function chunk(name: string, data: Uint8Array): Uint8Array {
  const whole = new Uint8Array(data.length + 12);
  const view = new DataView(whole.buffer);
  view.setUint32(0, data.length);
  whole.set(new TextEncoder().encode(name), 4);
  whole.set(data, 8);
  view.setUint32(data.length + 8, checksum(whole.subarray(4, data.length + 8)));
  return whole;
}

/** CRC-32 as in the standard's annex D. */
function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}

export function join(parts: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]));
}
