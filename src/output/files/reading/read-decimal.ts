/**
 * Numbers read straight from the bytes of a text.
 *
 * Up to 15 digits and a power of ten up to 22 are exact as doubles, so that one product or quotient of them is the double
 * nearest to the decimal (W. Clinger, How to read floating point numbers accurately, 1990). Anything longer is left to the
 * engine.
 */

/** Powers of ten that a double holds exactly. */
const POWERS = Array.from({ length: 23 }, (_, i) => 10 ** i);

/** Digits that a double always holds. */
const MOST_DIGITS = 15;

const ZERO = 48;
const NINE = 57;
const PLUS = 43;
const MINUS = 45;
const POINT = 46;
/** Makes a capital letter small. */
const SMALL = 32;
const SMALL_E = 101;

/** The decimal that stands from `from` to `to`; NaN where something else does. */
export function readDecimal(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  const negative = bytes[at] === MINUS;
  if (at < to && (negative || bytes[at] === PLUS)) at++;
  let mantissa = 0;
  let digits = 0;
  let seen = 0;
  let places = 0;
  let pointed = false;
  for (; at < to; at++) {
    const byte = bytes[at];
    if (byte >= ZERO && byte <= NINE) {
      mantissa = 10 * mantissa + byte - ZERO;
      seen++;
      if (digits > 0 || byte !== ZERO) digits++;
      if (pointed) places++;
    } else if (byte === POINT && !pointed) pointed = true;
    else break;
  }
  if (seen === 0) return Number.NaN;
  let power = -places;
  if (at < to) {
    const exponent = readExponent(bytes, at, to);
    if (exponent === undefined) return Number.NaN;
    power += exponent;
  }
  if (digits > MOST_DIGITS || Math.abs(power) >= POWERS.length) return Number(asciiText(bytes, from, to));
  const size = power < 0 ? mantissa / POWERS[-power] : mantissa * POWERS[power];
  return negative ? -size : size;
}

/** The power that `e-12` stands for; undefined where something else does. */
function readExponent(bytes: Uint8Array, from: number, to: number): number | undefined {
  if ((bytes[from] | SMALL) !== SMALL_E) return undefined;
  let at = from + 1;
  const negative = bytes[at] === MINUS;
  if (negative || bytes[at] === PLUS) at++;
  if (at >= to) return undefined;
  let power = 0;
  for (; at < to; at++) {
    if (bytes[at] < ZERO || bytes[at] > NINE) return undefined;
    power = 10 * power + bytes[at] - ZERO;
  }
  return negative ? -power : power;
}

/** Bytes as text, one character each. */
export function asciiText(bytes: Uint8Array, from: number, to: number): string {
  return String.fromCharCode(...bytes.subarray(from, to));
}
