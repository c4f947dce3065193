/**
 * The design document as JSON Schema, draft 2020-12, so that editors complete and check it.
 *
 * Refinements have no counterpart there: descriptions say them. What comes again is written once, under `$defs`.
 */
import { z } from "zod";
import { designSchema } from "./schema.js";
import { shareParts } from "./share-parts.js";

/** A JSON Schema as a plain object. */
export type JsonSchema = z.core.JSONSchema.BaseSchema;

/**
 * The schema of what is written: fields with a default may be left out.
 *
 * @example
 * const { properties = {} } = designJsonSchema();
 * console.log(Object.keys(properties)); // annulet, name, size …
 */
export function designJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(designSchema, {
    target: "draft-2020-12",
    io: "input",
    override: ({ jsonSchema }) => {
      delete jsonSchema.id;
      if (jsonSchema.const !== undefined || jsonSchema.enum !== undefined) delete jsonSchema.type;
      for (const property of Object.values(jsonSchema.properties ?? {})) {
        if (typeof property === "object") describeConstant(property);
      }
    },
  });
  return { $schema, title: "annulet design", ...shareParts(rest) };
}

/** What a constant says, so that editors show it beside the choices. */
function describeConstant(property: JsonSchema): void {
  if (property.const === undefined || property.description !== undefined) return;
  property.description = `always ${JSON.stringify(property.const)}`;
}
