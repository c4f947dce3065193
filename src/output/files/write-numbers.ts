/**
 * Decimal text of numbers, written straight into bytes.
 *
 * A float32 needs at most 9 significant digits to be read back as itself, and every decimal of up to 6 digits survives
 * the way there and back (IEEE 754-2019, table 3.5; FLT_DECIMAL_DIG and FLT_DIG in ISO C). So the shortest text is the
 * first of 6, 7, 8, 9 digits that reads back, without trailing zeros.
 */

/** Most bytes that `writeFloat32` takes: a sign and the 21 digits that the engine writes before it turns to exponents. */
export const FLOAT32_BYTES = 22;

/** Most bytes that `writeInteger` takes for a 32-bit count. */
export const INTEGER_BYTES = 10;

/** Powers of ten that a double holds exactly and that the fast way needs. */
const POWERS = Array.from({ length: 16 }, (_, i) => 10 ** i);

/** Sizes that are written without an exponent; outside them the engine's own text is used. */
const PLAIN_FROM = 1e-6;
const PLAIN_TO = 1e9;

/** Writes the shortest decimal that reads back as float32 `Math.fround(value)`; −0 is written 0. Returns the new end. */
export function writeFloat32(bytes: Uint8Array, at: number, value: number): number {
  const float = Math.fround(value);
  const size = Math.abs(float);
  if (Number.isInteger(float) && size < PLAIN_TO) {
    let end = at;
    if (float < 0) bytes[end++] = MINUS;
    return writeInteger(bytes, end, size);
  }
  if (size >= PLAIN_FROM && size < PLAIN_TO) {
    const whole = digitsBeforePoint(size);
    for (let digits = 6; digits <= 9; digits++) {
      const places = digits - whole;
      if (places < 0) continue;
      const scaled = Math.round(size * POWERS[places]);
      if (Math.fround(scaled / POWERS[places]) === size) return writeScaled(bytes, at, float < 0, scaled, places);
    }
  }
  return writeAscii(bytes, at, shortestFloat32(float));
}

/** Writes a whole number from 0 to 2³² − 1. Returns the new end. */
export function writeInteger(bytes: Uint8Array, at: number, value: number): number {
  let length = 1;
  for (let rest = value; rest >= 10; rest = Math.floor(rest / 10)) length++;
  let rest = value;
  for (let i = at + length - 1; i >= at; i--) {
    const tenth = Math.floor(rest / 10);
    bytes[i] = ZERO + rest - 10 * tenth;
    rest = tenth;
  }
  return at + length;
}

const ZERO = 48;
const MINUS = 45;
const POINT = 46;

/** The same by the engine's conversions: slower, for any finite float32. */
function shortestFloat32(float: number): string {
  for (let digits = 1; digits <= 9; digits++) {
    const text = Number(float.toPrecision(digits));
    if (Math.fround(text) === float) return String(text);
  }
  return String(float);
}

/** Digits in front of the point: 2 for 16.5, 0 for 0.5, −1 for 0.05. */
function digitsBeforePoint(size: number): number {
  let whole = 0;
  if (size >= 1) while (size >= POWERS[whole]) whole++;
  else while (size * POWERS[1 - whole] < 1) whole--;
  return whole;
}

/** Writes `scaled` / 10^places without trailing zeros. */
function writeScaled(bytes: Uint8Array, at: number, negative: boolean, scaled: number, places: number): number {
  let rest = scaled;
  let decimals = places;
  while (decimals > 0 && rest % 10 === 0) {
    rest /= 10;
    decimals--;
  }
  let end = at;
  if (negative) bytes[end++] = MINUS;
  const front = Math.floor(rest / POWERS[decimals]);
  end = writeInteger(bytes, end, front);
  if (decimals === 0) return end;
  let back = rest - front * POWERS[decimals];
  bytes[end] = POINT;
  for (let i = end + decimals; i > end; i--) {
    const tenth = Math.floor(back / 10);
    bytes[i] = ZERO + back - 10 * tenth;
    back = tenth;
  }
  return end + decimals + 1;
}

/** Writes ASCII text. Returns the new end. */
export function writeAscii(bytes: Uint8Array, at: number, text: string): number {
  for (let i = 0; i < text.length; i++) bytes[at + i] = text.charCodeAt(i);
  return at + text.length;
}
