/**
 * What a PNG file says of itself: its size and the kind of its samples (Portable Network Graphics, third edition, 11.2.1).
 */
import { brokenImage, IMAGE_LIMITS, tooLargeImage } from "./image-limits.js";

/** Colour types by the number that stands in the file. */
const COLOURS = {
  0: { colour: "grey", channels: 1, depths: [1, 2, 4, 8, 16] },
  2: { colour: "rgb", channels: 3, depths: [8, 16] },
  3: { colour: "palette", channels: 1, depths: [1, 2, 4, 8] },
  4: { colour: "grey-alpha", channels: 2, depths: [8, 16] },
  6: { colour: "rgb-alpha", channels: 4, depths: [8, 16] },
} as const;

export interface ImageHeader {
  readonly width: number;
  readonly height: number;
  /** Bits in a sample. */
  readonly depth: number;
  readonly colour: (typeof COLOURS)[keyof typeof COLOURS]["colour"];
  readonly channels: number;
  /** Whether the pixels come in seven passes. */
  readonly interlaced: boolean;
}

/**
 * Reads the header's 13 bytes.
 *
 * @throws AnnuletError `image-too-large`, `image-broken`
 */
export function readHeader(data: DataView, where: string): ImageHeader {
  const [width, height] = [data.getUint32(0), data.getUint32(4)];
  const [depth, type, compression, filter, interlace] = [8, 9, 10, 11, 12].map((at) => data.getUint8(at));
  if (width === 0 || height === 0) throw brokenImage("says that it has no pixels", where);
  if (width * height > IMAGE_LIMITS.pixels) {
    throw tooLargeImage(
      `says that it has ${width} by ${height} pixels`,
      `at most ${IMAGE_LIMITS.pixels} pixels`,
      where,
    );
  }
  const kind = Object.hasOwn(COLOURS, type) ? COLOURS[type as keyof typeof COLOURS] : undefined;
  const known = kind !== undefined && (kind.depths as readonly number[]).includes(depth);
  if (!known || compression !== 0 || filter !== 0 || interlace > 1) {
    throw brokenImage("says that it is of a kind that PNG does not know", where);
  }
  // The library would read packed samples in passes as if each had a byte of its own.
  if (interlace === 1 && depth < WHOLE_BYTE) {
    throw brokenImage(`is interlaced with ${depth} bits a sample, which is not read`, where);
  }
  return { width, height, depth, colour: kind.colour, channels: kind.channels, interlaced: interlace === 1 };
}

/** Bits in a byte. */
const WHOLE_BYTE = 8;

/** Where each of the seven passes begins and how far its pixels lie apart: x, y, across, down (section 8.2). */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;

/** Bytes of the pixels before compression, each line's filter byte included. */
export function rawLength({ width, height, depth, channels, interlaced }: ImageHeader): number {
  const size = (columns: number, lines: number) =>
    columns <= 0 || lines <= 0 ? 0 : lines * (1 + Math.ceil((columns * depth * channels) / WHOLE_BYTE));
  if (!interlaced) return size(width, height);
  return PASSES.reduce(
    (sum, [x, y, across, down]) => sum + size(Math.ceil((width - x) / across), Math.ceil((height - y) / down)),
    0,
  );
}
