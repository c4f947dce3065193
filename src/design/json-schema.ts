/**
 * The design document as JSON Schema, draft 2020-12, so that editors complete and check it.
 *
 * Refinements have no counterpart there: descriptions say them. What comes again is written once, under `$defs`.
 */
import { z } from "zod";
import { designSchema } from "./schema.js";
import { type SchemaPart, shareParts } from "./share-parts.js";
import { liftFromChoices, sayKindsOnce, terseDescription } from "./terse.js";

/** A JSON Schema as a plain object: the keywords that are asked for here, and any other. */
export interface JsonSchema {
  readonly $schema?: string;
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, JsonSchema>>;
  readonly title?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, JsonSchema | boolean>>;
  readonly required?: readonly string[];
  readonly [keyword: string]: unknown;
}

/**
 * The schema of what is written: fields with a default may be left out. Descriptions leave out ranges and defaults that
 * keywords say.
 *
 * @example
 * const { properties = {} } = designJsonSchema();
 * console.log(Object.keys(properties)); // annulet, name, size …
 */
export function designJsonSchema(): JsonSchema {
  return finish(
    sayKindsOnce(
      liftFromChoices(
        convert((part) => {
          const description = terseDescription(part);
          if (description !== undefined) part.description = description;
        }),
      ),
    ),
  );
}

/** The same schema with every description whole, for the reference. */
export function referenceSchema(): JsonSchema {
  return finish(
    convert(({ properties = {} }) => {
      for (const property of Object.values(properties)) if (typeof property === "object") describeConstant(property);
    }),
  );
}

/** A part while it is made. */
type OpenPart = z.core.JSONSchema.BaseSchema;

/** As zod writes it, each part changed by `describe`. */
function convert(describe: (part: OpenPart) => void): SchemaPart {
  return z.toJSONSchema(designSchema, {
    target: "draft-2020-12",
    io: "input",
    override: ({ jsonSchema }) => {
      delete jsonSchema.id;
      if (jsonSchema.const !== undefined || jsonSchema.enum !== undefined) delete jsonSchema.type;
      describe(jsonSchema);
    },
  });
}

function finish({ $schema: _, ...rest }: SchemaPart): JsonSchema {
  return { $schema: "https://json-schema.org/draft/2020-12/schema", title: "annulet design", ...shareParts(rest) };
}

/** What a constant says, to be shown beside the choices. */
function describeConstant(property: OpenPart): void {
  if (property.const === undefined || property.description !== undefined) return;
  property.description = `always ${JSON.stringify(property.const)}`;
}
