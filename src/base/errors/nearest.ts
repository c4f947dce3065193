/**
 * Finds what a slip of the pen was meant to be.
 */
import { closest, distance } from "fastest-levenshtein";

/** Longest text that a nearest one is sought for, in characters. */
const LONGEST_SLIP = 60;

/** Asks whether the nearest text was meant, unless more than half of it would have to change. */
export function nearest(value: unknown, choices: readonly unknown[]): string | undefined {
  const texts = choices.filter((choice) => typeof choice === "string");
  if (typeof value !== "string" || value.length > LONGEST_SLIP || texts.length === 0) return undefined;
  const found = closest(value.toLowerCase(), texts);
  const far = distance(value.toLowerCase(), found) > Math.max(value.length, found.length) / 2;
  return far ? undefined : `did you mean ${JSON.stringify(found)}?`;
}
