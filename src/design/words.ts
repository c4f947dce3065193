/**
 * What a schema allows, in words.
 */
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
      return limitsOf(schema).maximum === 0 ? "an empty list, []" : `a list${lengthInWords(schema, "entries")}`;
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

/** Whether only whole numbers are allowed. */
export function isWhole(schema: Schema): boolean {
  return limitsOf(schema).format?.includes("int") ?? false;
}

/** What zod gathers of a schema's checks. */
interface Limits {
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly format?: string;
}

function limitsOf(schema: Schema): Limits {
  return bare(schema)._zod.bag as Limits;
}

function numberInWords(schema: Schema): string {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum } = limitsOf(schema);
  const kind = isWhole(schema) ? "a whole number" : "a number";
  const real = (limit: number | undefined) =>
    limit === undefined || Math.abs(limit) >= Number.MAX_SAFE_INTEGER ? undefined : limit;
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
  const { minimum, maximum } = limitsOf(schema);
  if (minimum !== undefined && maximum !== undefined) return ` of ${minimum} to ${maximum} ${units}`;
  if (minimum !== undefined) return ` of at least ${minimum} ${units}`;
  return maximum === undefined ? "" : ` of at most ${maximum} ${units}`;
}

/** `system, value`; those that may be left out end in a question mark. */
function fieldsInWords(schema: Schema): string {
  return Object.entries(shapeOf(schema) ?? {})
    .map(([key, field]) => (field._zod.optin === "optional" ? `${key}?` : key))
    .join(", ");
}
