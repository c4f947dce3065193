/**
 * An image as brightness and cover of its pixels.
 *
 * Samples are taken as they stand: a height map means its numbers, so gamma and colour profiles are not applied. Colours
 * become grey by the luma weights of ITU-R BT.709, which give equal parts their own value.
 */
import { type DecodedPng, decode } from "fast-png";
import type { ImageHeader } from "./header.js";
import { brokenImage } from "./image-limits.js";
import { vetImage } from "./vet.js";

export interface Picture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** 0 black to 1 white, line after line from the top. */
  readonly value: Float32Array;
  /** 0 nothing there to 1 all there. */
  readonly cover: Float32Array;
}

const LUMA = [0.2126, 0.7152, 0.0722] as const;

/** Largest sample of a palette's colours. */
const PALETTE_WHITE = 255;

/**
 * Reads a PNG file.
 *
 * @param where the file's place in the document, for errors
 * @throws AnnuletError `image-too-large`, `image-broken`
 */
export async function readPicture(bytes: Uint8Array, name: string, where: string): Promise<Picture> {
  const { header, bytes: vetted } = await vetImage(bytes, where);
  let png: DecodedPng;
  try {
    png = decode(vetted, { checkCrc: true });
  } catch (cause) {
    throw brokenImage(`cannot be read: ${cause instanceof Error ? cause.message : String(cause)}`, where, cause);
  }
  const { width, height } = header;
  const value = new Float32Array(width * height);
  const cover = new Float32Array(width * height).fill(1);
  if (header.colour === "palette") takePalette(png, header, value, cover, where);
  else takeSamples(png, header, value, cover);
  return { name, width, height, value, cover };
}

/** Brightness and cover of the palette's colours, by the numbers of the pixels. */
function takePalette(
  png: DecodedPng,
  header: ImageHeader,
  value: Float32Array,
  cover: Float32Array,
  where: string,
): void {
  const colours = (png.palette ?? []).map(([red, green, blue, alpha = PALETTE_WHITE]) => ({
    value: luma(red, green, blue) / PALETTE_WHITE,
    cover: alpha / PALETTE_WHITE,
  }));
  eachSample(png, header, (sample, pixel) => {
    const colour = colours[sample];
    if (colour === undefined) throw brokenImage("has pixels whose number is not in its palette", where);
    value[pixel] = colour.value;
    cover[pixel] = colour.cover;
  });
}

function takeSamples(png: DecodedPng, header: ImageHeader, value: Float32Array, cover: Float32Array): void {
  const { channels, depth } = header;
  const white = 2 ** depth - 1;
  const hasCover = channels === 2 || channels === 4;
  const coloured = channels >= 3;
  const clear = png.transparency;
  eachSample(png, header, (sample, pixel, at) => {
    const [green, blue] = coloured ? [png.data[at + 1], png.data[at + 2]] : [sample, sample];
    value[pixel] = (coloured ? luma(sample, green, blue) : sample) / white;
    if (hasCover) cover[pixel] = png.data[at + channels - 1] / white;
    else if (clear !== undefined && sample === clear[0] && (!coloured || (green === clear[1] && blue === clear[2]))) {
      cover[pixel] = 0;
    }
  });
}

/** The first sample of each pixel; `at` is its place in the data. Samples smaller than a byte are unpacked. */
function eachSample(
  { data }: DecodedPng,
  { width, height, depth, channels }: ImageHeader,
  take: (sample: number, pixel: number, at: number) => void,
): void {
  const perByte = Math.max(1, 8 / depth);
  const line = Math.ceil(width / perByte) * channels;
  const mask = 2 ** depth - 1;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * line + Math.floor(x / perByte) * channels;
      // The first of several samples in a byte has its highest bits (section 7.2).
      const shift = perByte === 1 ? 0 : 8 - depth * (1 + (x % perByte));
      take((data[at] >> shift) & mask, y * width + x, at);
    }
  }
}

function luma(red: number, green: number, blue: number): number {
  return LUMA[0] * red + LUMA[1] * green + LUMA[2] * blue;
}
