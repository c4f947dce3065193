/**
 * A field of the document with all fields inside it, so that one question fills one part of the page.
 */
import type { FieldReference } from "../../index.js";
import { explainFieldOf, referenceSchema } from "../../toolbox/index.js";

/** A field, and where it is an object of one form the fields in it. */
export interface ExplainedField {
  /** Several where forms of the part around it have different fields of its name. */
  readonly own: readonly FieldReference[];
  readonly inside: Readonly<Record<string, readonly FieldReference[]>>;
}

let schema: object | undefined;

/** One schema serves every question: to make it takes far longer than to read it. */
export function explain(path: string): FieldReference[] {
  schema ??= referenceSchema();
  return explainFieldOf(schema, path);
}

/** @throws AnnuletError `field-unknown` */
export function explainInside(path: string): ExplainedField {
  const own = explain(path);
  const names = own.length === 1 ? own[0].fields.map(({ name }) => name).filter((name) => name !== "*") : [];
  const inside = names.map((name) => [name, explain(path === "" ? name : `${path}.${name}`)] as const);
  return { own, inside: Object.fromEntries(inside) };
}
