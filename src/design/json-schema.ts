/**
 * The design document as JSON Schema, draft 2020-12, so that editors complete and check it.
 *
 * Refinements have no counterpart there: descriptions say them.
 */
import { z } from "zod";
import { designSchema } from "./schema.js";

/** A JSON Schema as a plain object. */
export type JsonSchema = z.core.JSONSchema.BaseSchema;

/** The schema of what is written: fields with a default may be left out. */
export function designJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(designSchema, {
    target: "draft-2020-12",
    io: "input",
    override: ({ jsonSchema }) => {
      for (const property of Object.values(jsonSchema.properties ?? {})) {
        if (typeof property === "object") describeConstant(property, jsonSchema);
      }
    },
  });
  return { $schema, title: "annulet design", ...rest };
}

/** A constant that tells one form from the others is described by the form it belongs to. */
function describeConstant(property: JsonSchema, owner: JsonSchema): void {
  if (property.const === undefined || property.description !== undefined) return;
  const form = owner.description === undefined ? "" : `: ${owner.description}`;
  property.description = `always ${JSON.stringify(property.const)}${form}`;
}
