/**
 * What the trade says about the feel of wide bands and comfort bores. Advice: no size is ever changed for it.
 */
import { AnnuletError, type Warning } from "../base/errors.js";
import { showLength } from "../base/units.js";

export interface SizeAdviceOptions {
  /** Width of the band along the finger, mm, above 0. */
  readonly bandWidth: number;
  /** Form of the bore. */
  readonly bore: "flat" | "comfort";
}

/** Widths from which bands are said to fit tighter, mm, widest first, with the usual allowance (retail guides). */
const WIDE_BANDS = [
  { from: 8, allowance: "half a size to a whole size" },
  { from: 5, allowance: "a quarter to half a size" },
] as const;

const SIZE_MEANT = "Sizes here are US sizes, 0.81 mm of diameter each. Try on a sample of the same width and bore.";

/**
 * Notes on how the ring will feel, none for a narrow flat band.
 *
 * @throws AnnuletError `size-advice-width` for a width that is not above 0
 */
export function sizeAdvice({ bandWidth, bore }: SizeAdviceOptions): Warning[] {
  if (!(bandWidth > 0 && Number.isFinite(bandWidth))) {
    throw new AnnuletError({
      code: "size-advice-width",
      message: "A band has a width.",
      path: "profile.width",
      value: bandWidth,
      allowed: "a number above 0, mm",
    });
  }
  const advice: Warning[] = [];
  const wide = WIDE_BANDS.find((band) => bandWidth >= band.from);
  if (wide) {
    advice.push({
      code: "size-advice-wide-band",
      message:
        `A band ${showLength(bandWidth)} wide fits tighter: many makers add ${wide.allowance}. ` +
        "Sources disagree on how much; the size was left as it is.",
      path: "profile.width",
      value: bandWidth,
      hint: SIZE_MEANT,
    });
  }
  if (bore === "comfort") {
    advice.push({
      code: "size-advice-comfort-bore",
      message:
        "A comfort bore often fits looser, by a quarter to half a size. " +
        "Sources disagree on whether and how much; the size was left as it is.",
      path: "profile.bore.form",
      value: bore,
      hint: SIZE_MEANT,
    });
  }
  return advice;
}
