/**
 * A JSON Schema that says nothing twice: descriptions leave out what keywords beside them say, which programs read, and
 * choices leave out what is said of all of them.
 */

import { mapParts, type SchemaPart } from "./share-parts.js";

/** What of a JSON Schema is compared with its description. */
export interface DescribedPart {
  readonly description?: string;
  readonly default?: unknown;
  readonly minimum?: number;
  readonly exclusiveMinimum?: number | boolean;
  readonly maximum?: number;
  readonly multipleOf?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
}

/** What ends a phrase. */
const END = "(?=$|[;,.])";

/**
 * The description shortened, e.g. `gap, mm, 0 to 20; default 0.3` to `gap, mm` where the keywords have just these numbers.
 * A phrase that says anything else stays. That there is no default is what no keyword says too.
 *
 * @returns undefined where there is no description
 */
export function terseDescription(part: DescribedPart): string | undefined {
  const { description } = part;
  if (description === undefined) return undefined;
  let text = description;
  for (const phrase of phrasesOf(part)) text = text.replace(new RegExp(`[;,] ${literal(phrase)}${END}`), "");
  return text.replace(/\.$/, "");
}

/** What the keywords say, in the words of descriptions. */
function phrasesOf(part: DescribedPart): string[] {
  const { minimum, exclusiveMinimum, maximum, multipleOf, minLength, maxLength, minItems, maxItems } = part;
  const phrases = [defaultPhrase(part.default), "no default"];
  if (minimum !== undefined && maximum !== undefined) phrases.push(`${minimum} to ${maximum}`);
  if (exclusiveMinimum !== undefined && maximum !== undefined) {
    phrases.push(`above ${exclusiveMinimum} and at most ${maximum}`);
  }
  if (minimum !== undefined) phrases.push(`${minimum} or more`);
  if (exclusiveMinimum !== undefined) phrases.push(`above ${exclusiveMinimum}`);
  if (multipleOf === 2) phrases.push("an even number");
  if (maxLength !== undefined) phrases.push(`${minLength ?? 0} to ${maxLength} characters`);
  if (maxItems !== undefined) phrases.push(`at most ${maxItems}`, `${minItems ?? 0} to ${maxItems}`);
  return phrases;
}

/** Lists and objects have no words for what they are but that they are empty. */
function defaultPhrase(preset: unknown): string {
  const isPlain = preset !== undefined && typeof preset !== "object";
  return isPlain ? `default ${preset}` : "default none";
}

/** A choice among others, as far as it is looked into. */
type Choice = SchemaPart & { readonly properties?: Readonly<Record<string, object>> };

/**
 * Says once beside the choices, in all of the schema, what all of them say: the type, the fields that must be there, and
 * that there are no others. The last only where a constant tells the choices apart.
 */
export function liftFromChoices(schema: SchemaPart): SchemaPart {
  return changeParts(schema, liftHere);
}

/**
 * Says the kind of a list's entries once where all are of one, and leaves out a largest whole number that no limit is
 * but the largest that is exact.
 */
export function sayKindsOnce(schema: SchemaPart): SchemaPart {
  return changeParts(schema, (part) => {
    const { prefixItems, maximum, ...others } = part;
    const bounded = maximum === undefined || maximum === Number.MAX_SAFE_INTEGER ? others : { ...others, maximum };
    if (prefixItems === undefined) return bounded;
    return isAlike(part) ? { ...bounded, items: (prefixItems as unknown[])[0] } : { ...bounded, prefixItems };
  });
}

/** Whether it is a list of just as many entries as are told, all told alike. */
function isAlike({ prefixItems, items, minItems }: SchemaPart): boolean {
  if (!Array.isArray(prefixItems) || items !== false || minItems !== prefixItems.length) return false;
  return new Set(prefixItems.map((item) => JSON.stringify(item))).size === 1;
}

/** Changes every part of a schema, those within others first. */
function changeParts(schema: SchemaPart, change: (part: SchemaPart) => SchemaPart): SchemaPart {
  const inner = mapParts(schema, (part) => changeParts(part, change));
  if (inner.$defs === undefined) return change(inner);
  // mapParts looks into definitions and leaves themselves to whoever names them.
  const definitions = Object.entries(inner.$defs as Readonly<Record<string, SchemaPart>>);
  return change({ ...inner, $defs: Object.fromEntries(definitions.map(([name, part]) => [name, change(part)])) });
}

function liftHere(part: SchemaPart): SchemaPart {
  const keyword = "oneOf" in part ? "oneOf" : "anyOf";
  const choices = part[keyword] as readonly Choice[] | undefined;
  if (choices === undefined || ["type", "required", "properties"].some((taken) => taken in part)) return part;
  if (choices.some(({ type }) => type !== "object")) return part;
  const lifted = ["type", "required"].filter((name) => sayTheSame(choices, name));
  const above = Object.fromEntries(lifted.map((name) => [name, choices[0][name]]));
  if (choices.every(isToldByConstant) && choices.every(({ additionalProperties: more }) => more === false)) {
    lifted.push("additionalProperties");
    above.unevaluatedProperties = false;
  }
  return { ...part, ...above, [keyword]: choices.map((choice) => without(choice, lifted)) };
}

function sayTheSame([first, ...others]: readonly Choice[], keyword: string): boolean {
  const said = JSON.stringify(first[keyword]);
  return said !== undefined && others.every((choice) => JSON.stringify(choice[keyword]) === said);
}

function isToldByConstant({ properties = {}, required }: Choice): boolean {
  const needed = Array.isArray(required) ? required : [];
  return Object.entries(properties).some(([name, property]) => "const" in property && needed.includes(name));
}

function without(choice: Choice, keywords: readonly string[]): SchemaPart {
  return Object.fromEntries(Object.entries(choice).filter(([keyword]) => !keywords.includes(keyword)));
}

function literal(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
