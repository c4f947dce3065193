/**
 * What a schema allows, in words.
 */
import { z } from "zod";
import { bare, definitionOf, discriminatorOf, literalsOf, type Schema, shapeOf } from "./forms.js";

/** In words, for the `allowed` of an error: `a number from 0.1 to 5`. */
export function allowedBy(schema: Schema): string {
  const def = definitionOf(schema);
  switch (def.type) {
    case "number":
      return numberInWords(schema);
    case "string":
      return `text${lengthInWords(schema, "characters")}`;
    case "boolean":
      return "true or false";
    case "literal":
      return def.values.map(showLiteral).join(" or ");
    case "enum":
      return Object.values(def.entries).map(showLiteral).join(", ");
    case "array":
      return limitsOf(schema).maxItems === 0 ? "an empty list, []" : `a list${lengthInWords(schema, "entries")}`;
    case "tuple":
      return `a list [${def.items.map(allowedBy).join(", ")}]`;
    case "object":
      return `{${fieldsInWords(schema)}}`;
    case "union": {
      const discriminator = discriminatorOf(def);
      if (discriminator === undefined) return def.options.map(allowedBy).join(" or ");
      const forms = def.options.flatMap((option) => literalsOf(option, discriminator));
      return `an object with ${showLiteral(discriminator)} ${forms.map(showLiteral).join(", ")}`;
    }
    default:
      return "anything";
  }
}

/** A value as it is written in a document. */
export function showLiteral(value: unknown): string {
  return JSON.stringify(value) ?? String(value);
}

/** A schema's limits, as JSON Schema has them: zod's public account of its checks. */
function limitsOf(schema: Schema): z.core.JSONSchema.BaseSchema {
  return z.toJSONSchema(bare(schema), { io: "input", unrepresentable: "any" });
}

function numberInWords(schema: Schema): string {
  const { type, minimum, maximum, exclusiveMinimum, exclusiveMaximum } = limitsOf(schema);
  const kind = type === "integer" ? "a whole number" : "a number";
  const real = (limit: unknown) =>
    typeof limit !== "number" || Math.abs(limit) >= Number.MAX_SAFE_INTEGER ? undefined : limit;
  const [least, most, above, below] = [minimum, maximum, exclusiveMinimum, exclusiveMaximum].map(real);
  if (above === undefined && below === undefined && least !== undefined && most !== undefined) {
    return `${kind} from ${showNumber(least)} to ${showNumber(most)}`;
  }
  const parts = [
    above === undefined ? undefined : `above ${showNumber(above)}`,
    least === undefined || above !== undefined ? undefined : `of at least ${showNumber(least)}`,
    below === undefined ? undefined : `below ${showNumber(below)}`,
    most === undefined || below !== undefined
      ? undefined
      : `${above === undefined ? "of" : "and"} at most ${showNumber(most)}`,
  ].filter((part) => part !== undefined);
  return [kind, ...parts].join(" ");
}

/** Digits that a limit is shown with: some are computed. */
const SHOWN_DIGITS = 6;

export function showNumber(value: number): string {
  return String(Number(value.toPrecision(SHOWN_DIGITS)));
}

function lengthInWords(schema: Schema, units: string): string {
  const { minLength, maxLength, minItems, maxItems } = limitsOf(schema);
  const [minimum, maximum] = [minLength ?? minItems, maxLength ?? maxItems];
  if (minimum !== undefined && maximum !== undefined) return ` of ${minimum} to ${maximum} ${units}`;
  if (minimum !== undefined) return ` of at least ${minimum} ${units}`;
  return maximum === undefined ? "" : ` of at most ${maximum} ${units}`;
}

/** `system, value`; those that may be left out end in a question mark. */
function fieldsInWords(schema: Schema): string {
  return Object.entries(shapeOf(schema) ?? {})
    .map(([key, field]) => (field._zod.optin !== undefined ? `${key}?` : key))
    .join(", ");
}
