/**
 * A place in the document beside the name that the schema's reference has for it: lists passed through, forms named.
 */
import type { Path } from "../state/json-text.js";

/** Where a field stands, in both. */
export interface Place {
  readonly path: Path;
  /** As `explainField` takes it: `profile.outside.channel.rail`. */
  readonly schema: string;
}

/** The whole document. */
export const ROOT_PLACE: Place = { path: [], schema: "" };

/** A field inside an object that stands at a place. */
export function fieldOf(owner: Place, key: string): Place {
  return { path: [...owner.path, key], schema: joined(owner.schema, key) };
}

/** The same object, known to be in one of its forms. */
export function inForm(place: Place, form: string | undefined): Place {
  return form === undefined ? place : { path: place.path, schema: joined(place.schema, form) };
}

/** An entry of a list: the reference has no step of its own for it. */
export function entryOf(list: Place, at: number): Place {
  return { path: [...list.path, at], schema: list.schema };
}

function joined(schema: string, step: string): string {
  return schema === "" ? step : `${schema}.${step}`;
}

/** Whether a place lies in another, or is it. */
export function isInside(inner: Path | undefined, outer: Path): boolean {
  return inner !== undefined && inner.length >= outer.length && outer.every((key, i) => inner[i] === key);
}
