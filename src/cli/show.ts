/**
 * Numbers as the program prints them.
 */

/** Three decimals: a thousandth of a millimetre is below what any caster can hold. */
export function fixed(value: number, decimals = 3): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}

/** `fixed` with its sign. */
export function signed(value: number, decimals = 3): string {
  const text = fixed(value, decimals);
  return Number(text) > 0 ? `+${text}` : text;
}

/** A share as percent with its sign, three decimals. */
export function signedPercent(share: number): string {
  return `${signed(share * 100)} %`;
}

/** Shown where a table has nothing to say. */
export const NOTHING = "–";

/** Lines of two columns, the first padded to the widest. */
export function showPairs(pairs: readonly (readonly [string, string])[]): string {
  const width = Math.max(...pairs.map(([name]) => name.length));
  return pairs.map(([name, value]) => `${name.padEnd(width)}  ${value}`).join("\n");
}
