/**
 * A picture as the bytes of a PNG file, 8 bits a channel, without alpha where all of it is opaque.
 */
import { encode } from "fast-png";
import { AnnuletError } from "../../base/errors.js";
import { BYTES } from "../../base/options.js";
import type { Picture } from "./picture.js";

/**
 * A picture as the bytes of a PNG file, sRGB, 8 bits; with alpha only where something is seen through.
 *
 * @throws AnnuletError `picture-invalid` where there are not four bytes for each pixel
 *
 * @example
 * const { mesh } = await build(document, { detail: "draft" });
 * const bytes = encodePng(takePicture(mesh, { width: 200, height: 150 }));
 */
export function encodePng(picture: Picture): Uint8Array {
  const { width, height, pixels } = requirePicture(picture);
  const opaque = isOpaque(pixels);
  return encode({ width, height, data: opaque ? withoutAlpha(pixels) : pixels, depth: 8, channels: opaque ? 3 : 4 });
}

function requirePicture(picture: Picture): Picture {
  const { width, height, pixels } = Object(picture) as Partial<Picture>;
  const sides = [width, height].every((side) => Number.isInteger(side) && Number(side) > 0);
  if (sides && pixels !== undefined && BYTES.holds(pixels) && pixels.length === 4 * Number(width) * Number(height))
    return picture;
  throw new AnnuletError({
    code: "picture-invalid",
    message: "the picture has not four bytes for each pixel",
    value: { width, height, bytes: pixels?.length },
    allowed: "width and height, whole and above 0, and pixels, a Uint8Array of 4 · width · height bytes",
  });
}

function isOpaque(pixels: Uint8Array): boolean {
  for (let i = 3; i < pixels.length; i += 4) if (pixels[i] !== 255) return false;
  return true;
}

function withoutAlpha(pixels: Uint8Array): Uint8Array {
  const data = new Uint8Array((pixels.length / 4) * 3);
  for (let from = 0, to = 0; from < pixels.length; from += 4, to += 3) {
    data[to] = pixels[from];
    data[to + 1] = pixels[from + 1];
    data[to + 2] = pixels[from + 2];
  }
  return data;
}
