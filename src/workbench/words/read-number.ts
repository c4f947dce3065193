/**
 * A number as typed: with a decimal comma or point, with a unit behind it.
 */

const TYPED = /^\s*([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(?:mm|°|%)?\s*$/u;

/** The number that a text means; undefined where it is none. */
export function readNumber(typed: string): number | undefined {
  const [, number] = TYPED.exec(typed.replace("−", "-")) ?? [];
  return number === undefined ? undefined : Number(number.replace(",", "."));
}
