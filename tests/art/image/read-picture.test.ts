/**
 * Images as brightness: every kind of PNG, held to resvg's decoder (the png crate), which shares no code with ours.
 */
import { Resvg } from "@resvg/resvg-js";
import { encode } from "fast-png";
import { describe, expect, it } from "vitest";
import { readPicture } from "../../../src/art/image/read-picture.js";
import { greyPng, rawPng } from "./pngs.js";

const [W, H] = [5, 3];

/** Red, green, blue and alpha of every pixel as resvg shows it at one pixel a unit, with alpha multiplied in. */
function byResvg(png: Uint8Array, width: number, height: number): Uint8Array {
  const href = `data:image/png;base64,${Buffer.from(png).toString("base64")}`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><image width="${width}" height="${height}" image-rendering="optimizeSpeed" href="${href}"/></svg>`;
  return new Resvg(svg).render().pixels;
}

const samples = (count: number, most: number) => Array.from({ length: count }, (_, i) => (i * 7919 + 13) % (most + 1));
const eight = (channels: 1 | 2 | 3 | 4) =>
  encode({ width: W, height: H, channels, depth: 8, data: Uint8Array.from(samples(W * H * channels, 255)) });
const sixteen = (channels: 1 | 2 | 3 | 4, interlace?: "Adam7") =>
  encode(
    { width: W, height: H, channels, depth: 16, data: Uint16Array.from(samples(W * H * channels, 65_535)) },
    interlace === undefined ? {} : { interlace },
  );
const palette = Uint8Array.of(0, 0, 0, 255, 255, 255, 200, 30, 10, 20, 120, 90);
/** Two bits a sample: 5 pixels take two bytes, of which six bits are not used. */
const packedLines = Uint8Array.of(0, 0b00011011, 0b11000000, 0, 0b11100100, 0b01000000, 0, 0b01010101, 0b10000000);
const before = [
  ["PLTE", palette],
  ["tRNS", Uint8Array.of(255, 128)],
] as const;

const files: Readonly<Record<string, Uint8Array>> = {
  "grey, 8 bit": eight(1),
  "grey with alpha, 8 bit": eight(2),
  "colour, 8 bit": eight(3),
  "colour with alpha, 8 bit": eight(4),
  "grey, 16 bit": sixteen(1),
  "grey with alpha, 16 bit": sixteen(2),
  "colour, 16 bit": sixteen(3),
  "colour with alpha, 16 bit, interlaced": sixteen(4, "Adam7"),
  "palette, 2 bit, with clear colours": rawPng({
    width: W,
    height: H,
    depth: 2,
    colour: 3,
    before,
    lines: packedLines,
  }),
  "grey, 2 bit": rawPng({ width: W, height: H, depth: 2, colour: 0, lines: packedLines }),
  "grey, 8 bit, one grey clear": rawPng({
    width: 2,
    height: 1,
    depth: 8,
    colour: 0,
    before: [["tRNS", Uint8Array.of(0, 77)]],
    lines: Uint8Array.of(0, 77, 78),
  }),
};

describe.each(Object.entries(files))("%s", (_, png) => {
  it("has the greys and the clear places that resvg shows", async () => {
    const { width, height, value, cover } = await readPicture(png, "a.png", "r.image");
    const shown = byResvg(png, width, height);
    for (let i = 0; i < width * height; i++) {
      const [red, green, blue, alpha] = shown.subarray(4 * i, 4 * i + 4);
      const grey = (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
      // resvg rounds to 8 bits, colours times alpha.
      expect(Math.abs(cover[i] - alpha / 255)).toBeLessThan(1 / 255);
      expect(Math.abs(value[i] * cover[i] - grey)).toBeLessThan(2 / 255);
    }
  });
});

it("keeps every step of 16 bits", async () => {
  const { value } = await readPicture(
    greyPng(256, 256, (x, y) => (Math.floor(y * 256) * 256 + Math.floor(x * 256)) / 65_535),
    "ramp.png",
    "r.image",
  );
  value.forEach((light, i) => {
    if (light !== Math.fround(i / 65_535)) throw new Error(`step ${i} is ${light}`);
  });
  expect(new Set(value).size).toBe(65_536);
});
