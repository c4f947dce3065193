/**
 * Lengths of SVG files in px, its user unit. SVG 1.1 (Second Edition), 7.10, with the px of CSS Values 3: 96 to the inch.
 */
import { AnnuletError } from "../../base/errors.js";
import { MM_PER_INCH } from "../../base/units.js";

/** CSS px in an inch (CSS Values and Units Module Level 3, 5.2). */
export const PX_PER_INCH = 96;

/** What em and rem are, px. */
export interface FontSizes {
  readonly em: number;
  readonly rem: number;
}

/** Height of letters, px, where a file names none; CSS's "medium" in every browser (no source). */
const FONT_SIZE = 16;

export const INITIAL_FONTS: FontSizes = { em: FONT_SIZE, rem: FONT_SIZE };

const UNITS: Readonly<Record<string, number>> = {
  "": 1,
  px: 1,
  in: PX_PER_INCH,
  mm: PX_PER_INCH / MM_PER_INCH,
  cm: (10 * PX_PER_INCH) / MM_PER_INCH,
  q: PX_PER_INCH / MM_PER_INCH / 4,
  pt: PX_PER_INCH / 72,
  pc: PX_PER_INCH / 6,
};

/** Units by the height of letters. ex is half an em where the font is not known (CSS Values 3, 5.1.1). */
const FONT_UNITS: Readonly<Record<string, (fonts: FontSizes) => number>> = {
  em: ({ em }) => em,
  rem: ({ rem }) => rem,
  ex: ({ em }) => em / 2,
};

const LENGTH = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*([a-z]*|%)\s*$/i;

/** A length in px, a percentage of `whole` px; undefined where the text is no length. */
export function parseLength(text: string, whole: number, fonts = INITIAL_FONTS): number | undefined {
  const match = LENGTH.exec(text);
  if (match === null) return undefined;
  const [number, unit] = [Number(match[1]), match[2].toLowerCase()];
  const factor = unit === "%" ? whole / 100 : (UNITS[unit] ?? FONT_UNITS[unit]?.(fonts));
  return factor === undefined || !Number.isFinite(number * factor) ? undefined : number * factor;
}

/**
 * A length that must be one.
 *
 * @param what the attribute and its element, for the message
 * @throws AnnuletError `svg-length`
 */
export function requireLength(text: string, whole: number, what: string, where: string, fonts = INITIAL_FONTS): number {
  const length = parseLength(text, whole, fonts);
  if (length !== undefined) return length;
  throw new AnnuletError({
    code: "svg-length",
    message: `${what} is no length`,
    path: where,
    value: text,
    allowed: "a finite number, alone or with px, mm, cm, in, pt, pc, em, ex or %",
  });
}
