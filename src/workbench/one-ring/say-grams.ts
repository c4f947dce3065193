/**
 * A weight in words, as far as the published densities agree.
 */
import { say, sayNumber } from "../words/language.js";

/** A tenth of a gram: more than a customer weighs. */
const DIGITS = 1;

/** @param grams by the smallest and largest published density */
export function sayGrams([least, most]: readonly [number, number]): string {
  const [from, to] = [sayNumber(least, DIGITS), sayNumber(most, DIGITS)];
  return from === to ? `${from} g` : say("one-ring.grams", { from, to });
}
