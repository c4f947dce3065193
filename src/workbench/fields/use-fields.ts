/**
 * What every control asks of the bench: the value of its field, and what the schema says of it.
 */
import { type Bench, useBench } from "../state/bench.js";
import { valueAt } from "../state/json-text.js";
import { FieldBook } from "./field-book.js";
import type { Place } from "./place.js";
import { isObject } from "./ways.js";

const BOOKS = new WeakMap<Bench, FieldBook>();

/** The book of a bench: one for all of its controls. */
export function bookOf(bench: Bench): FieldBook {
  const book = BOOKS.get(bench) ?? new FieldBook((schema) => bench.host.peek().library.explainInside(schema));
  BOOKS.set(bench, book);
  return book;
}

export function useBook(): FieldBook {
  return bookOf(useBench());
}

/** What stands at a place; components that ask are drawn anew when the document changes. */
export function useValue({ path }: Place): unknown {
  return valueAt(useBench().document.value.value, path);
}

/** The object at a place; an empty one where none is. */
export function useOwner(place: Place): Readonly<Record<string, unknown>> {
  const value = useValue(place);
  return isObject(value) ? value : {};
}
