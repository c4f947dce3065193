/**
 * A number as typed: with a decimal comma or point, with a unit behind it.
 */

/** A sign, digits with at most one comma or point; the typographic minus counts. */
const WRITTEN = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

const UNIT = /\s*(?:mm|°|%)$/u;

/** The number that a text means; undefined where it is none. */
export function readNumber(typed: string): number | undefined {
  return numberIn(typed.trim().replace(UNIT, ""));
}

/** The same of a text without spaces around it and without a unit. */
export function numberIn(text: string): number | undefined {
  const plain = text.replace("−", "-");
  return WRITTEN.test(plain) ? Number(plain.replace(",", ".")) : undefined;
}
