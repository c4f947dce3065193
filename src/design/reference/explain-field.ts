/**
 * The reference of the design document, field by field, made from its JSON Schema.
 */
import { AnnuletError } from "../../base/errors.js";
import { referenceSchema } from "../json-schema.js";
import { describeField } from "./describe-field.js";
import type { FieldReference } from "./field-reference.js";
import { findField } from "./find-field.js";
import type { SchemaNode } from "./schema-node.js";

/**
 * What a field of the design document is: kind, unit, range, default, and the fields or forms inside it.
 *
 * @param path e.g. `profile.outside.rail` or `pattern.regions.section`; empty for the whole document. Lists are passed
 *   through, with or without an index.
 * @returns one entry, or several where forms have different fields of that name, each with the forms that have it
 * @throws AnnuletError `field-unknown` with what is known there, and the nearest name
 *
 * @example
 * explainField("profile.outside.rail")[0].default // 0.9
 */
export function explainField(path: string): FieldReference[] {
  const asked: unknown = path;
  if (typeof asked !== "string") {
    const allowed = "text, e.g. profile.outside; empty for the whole document";
    throw new AnnuletError({ code: "field-unknown", message: "a field is named by a text", value: asked, allowed });
  }
  return explainFieldOf(referenceSchema(), path);
}

/** The same of a JSON Schema that is at hand. */
export function explainFieldOf(schema: object, path: string): FieldReference[] {
  const root = schema as SchemaNode;
  return findField(path, root).map(({ node, required, of }) => describeField(node, root, { path, required, of }));
}
