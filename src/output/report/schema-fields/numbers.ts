/**
 * Kinds of numbers that fields of the report share.
 */
import { z } from "zod";

/** A length. */
export function mm(what: string) {
  return z.number().describe(`${what}, mm`);
}

/** x, y and z. */
export const point = z.tuple([z.number(), z.number(), z.number()]);

/** A box by its corners. */
export const range = z.strictObject({
  min: point.describe("least x, y and z, mm"),
  max: point.describe("largest x, y and z, mm"),
});
