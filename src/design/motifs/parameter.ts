/**
 * The kinds of a motif's parameters: numbers whose description says what they are, their unit, range and default.
 */
import { z } from "zod";

type Range = readonly [least: number, most: number, standard: number];

/** A share of something, named in `what`: "width, share of the tile's". */
export function share(what: string, range: Range) {
  return within(z.number(), what, range);
}

/** An angle in degrees. */
export function angle(what: string, range: Range) {
  return within(z.number(), `${what}, degrees`, range);
}

/** A whole number. */
export function count(what: string, range: Range) {
  return within(z.int(), what, range);
}

/** An even number. */
export function evenCount(what: string, range: Range) {
  return within(z.int().multipleOf(2), `${what}, an even number`, range);
}

function within(number: z.ZodNumber, what: string, [least, most, standard]: Range) {
  return number.min(least).max(most).default(standard).describe(`${what}, ${least} to ${most}; default ${standard}`);
}
