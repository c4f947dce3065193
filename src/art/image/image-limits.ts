/**
 * Limits on image files: far above height maps made for a ring, low enough that a file made to stall is refused at once.
 * All are chosen, not taken from a source.
 */
import { ART_BYTES } from "../../base/art-files.js";
import { AnnuletError } from "../../base/errors.js";

export const IMAGE_LIMITS = {
  /** Largest file, bytes. */
  bytes: ART_BYTES.image,
  /** Most pixels: 2 000 by 2 000, or 60 mm by 7 mm with a pixel every 10 µm. */
  pixels: 4_200_000,
  /** Most pieces of a file. */
  chunks: 20_000,
  /** Most samples of the relief round the whole band. */
  samples: 300_000,
} as const;

/** The error for a file that is no sound PNG. */
export function brokenImage(what: string, where: string, cause?: unknown): AnnuletError {
  return new AnnuletError(
    {
      code: "image-broken",
      message: `the image ${what}`,
      path: where,
      allowed: "a sound PNG file",
      hint: "save the image again as PNG",
    },
    { cause },
  );
}

/** The error for an image that passes a limit. */
export function tooLargeImage(what: string, allowed: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "image-too-large",
    message: `the image ${what}`,
    path: where,
    allowed,
    hint: "scale it down: a pixel every few hundredths of a millimetre is finer than a caster can show",
  });
}
