/**
 * Finds how a field is written, in documents that are known to be good.
 */
import { findValues } from "./find-values.js";

/** A value and where it was found. */
export interface FieldExample {
  readonly value: unknown;
  /** Name of the document. */
  readonly from: string;
}

/** Longest example that is worth showing, in characters of JSON; chosen, about ten lines. */
const LONGEST = 600;

/**
 * The example that shows most of a field and is still short: of those up to the longest that is worth showing the one that
 * has most to say, the shortest of all where none is. Undefined where no document has the field.
 *
 * @param path as `pattern.regions.section`
 * @param documents name → parsed document
 */
export function exampleOf(path: string, documents: Readonly<Record<string, unknown>>): FieldExample | undefined {
  const found = Object.entries(documents).flatMap(([from, document]) =>
    findValues(path, document).map((value) => ({ value, from, length: JSON.stringify(value).length })),
  );
  if (found.length === 0) return undefined;
  found.sort((a, b) => a.length - b.length || a.from.localeCompare(b.from));
  const { value, from } = found.findLast(({ length }) => length <= LONGEST) ?? found[0];
  return { value, from };
}
