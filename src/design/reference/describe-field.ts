/**
 * One field of the document in words, from its node of the JSON Schema.
 */
import type { FieldLine, FieldReference, FormReference } from "./field-reference.js";
import { choicesOf, entriesOf, fieldsOf, follow, formName, type SchemaNode } from "./schema-node.js";

/** Units that descriptions name, the longer before those that they contain. */
const UNITS = ["g/cm³", "mm³", "mm", "degrees", "grams", "%"];

/** Where a field stands. */
export interface FieldPlace {
  readonly path: string;
  /** Forms of the part around it that have it. */
  readonly of?: readonly string[];
  readonly required: boolean;
}

/** All that the schema says of a field. */
export function describeField(node: SchemaNode, root: SchemaNode, { path, of, required }: FieldPlace): FieldReference {
  const found = follow(node, root);
  const objects = objectsOf(found, root);
  const { description, default: preset, examples } = found;
  return {
    path,
    of,
    description: description ?? soleDescription(found, root),
    kind: kindOf(found, root),
    unit: unitOf(found, root),
    range: rangeOf(found, root),
    choices: wordsOf(found, root),
    required,
    default: preset,
    examples,
    fields: objects.length === 1 ? linesOf(objects[0], root) : [],
    forms: objects.length > 1 ? objects.map((form) => describeForm(form, root)) : [],
  };
}

/** The fields of an object, one line each. */
export function linesOf(object: SchemaNode, root: SchemaNode): FieldLine[] {
  return fieldsOf(object).map(([name, field]) => {
    const found = follow(field, root);
    return {
      name,
      description: found.description ?? soleDescription(found, root),
      kind: kindOf(found, root),
      required: object.required?.includes(name) ?? false,
      default: found.default,
    };
  });
}

/** The objects that a value, or each entry of a list, may be. */
export function objectsOf(node: SchemaNode, root: SchemaNode): SchemaNode[] {
  return choicesOf(node, root).flatMap((choice) => {
    const entries = entriesOf(choice).flatMap((entry) => choicesOf(entry, root));
    return [choice, ...entries].filter((one) => fieldsOf(one).length > 0);
  });
}

/** A list says nothing of itself where its entries do. */
function soleDescription(node: SchemaNode, root: SchemaNode): string | undefined {
  const entries = entriesOf(node);
  return entries.length === 1 ? follow(entries[0], root).description : undefined;
}

function describeForm(form: SchemaNode, root: SchemaNode): FormReference {
  return { name: formName(form, root) ?? "", description: form.description, fields: linesOf(form, root) };
}

/** What is written: every kind once, joined by "or". */
function kindOf(node: SchemaNode, root: SchemaNode): string {
  const kinds = new Set(choicesOf(node, root).flatMap((choice) => kindsOf(choice, root)));
  return [...kinds].join(" or ") || "anything";
}

function kindsOf(node: SchemaNode, root: SchemaNode): string[] {
  if (node.const !== undefined) return [typeof node.const === "string" ? "word" : JSON.stringify(node.const)];
  if (node.enum !== undefined) return ["word"];
  const types = typeof node.type === "string" ? [node.type] : (node.type ?? []);
  return types.map((type) => (type === "array" ? listOf(node, root) : (KINDS[type] ?? type)));
}

const KINDS: Readonly<Record<string, string>> = {
  string: "text",
  integer: "whole number",
  boolean: "true or false",
};

function listOf(node: SchemaNode, root: SchemaNode): string {
  const kinds = new Set(
    entriesOf(node).flatMap((entry) => choicesOf(entry, root).flatMap((choice) => kindsOf(choice, root))),
  );
  if (node.prefixItems !== undefined) return `list of ${node.prefixItems.length}: ${[...kinds].join(" or ")}`;
  return kinds.size === 0 ? "list" : `list of ${[...kinds].map(plural).join(" or ")}`;
}

function plural(kind: string): string {
  return kind === "true or false" || kind.startsWith("list") ? kind : `${kind}s`;
}

function unitOf(node: SchemaNode, root: SchemaNode): string | undefined {
  const numbers = choicesOf(node, root).some(({ type }) => type === "number" || type === "integer");
  if (!numbers) return undefined;
  const text = node.description ?? "";
  return UNITS.find((unit) => new RegExp(`(^|[\\s,(])${unit}($|[\\s,;:.)])`).test(text));
}

/** Allowed words and numbers of a value that is chosen from a list of them. */
function wordsOf(node: SchemaNode, root: SchemaNode): unknown[] | undefined {
  const words = choicesOf(node, root).flatMap((choice) =>
    choice.const !== undefined ? [choice.const] : (choice.enum ?? []),
  );
  return words.length === 0 ? undefined : words;
}

/** The ranges of all choices that have one, each once. */
function rangeOf(node: SchemaNode, root: SchemaNode): string | undefined {
  const ranges = choicesOf(node, root).flatMap((choice) => [
    between(choice.exclusiveMinimum, choice.minimum, choice.maximum, choice.exclusiveMaximum),
    counted(choice.minItems, choice.maxItems, "entries"),
    counted(choice.minLength, choice.maxLength, "characters"),
  ]);
  const told = new Set(ranges.filter((range) => range !== undefined));
  return told.size === 0 ? undefined : [...told].join("; ");
}

function between(above?: number, least?: number, most?: number, below?: number): string | undefined {
  // Whole numbers carry the largest that JavaScript counts by as their limits: no limit that anyone meant.
  const from = [least, above].find((bound) => bound !== undefined && bound > Number.MIN_SAFE_INTEGER);
  const to = [most, below].find((bound) => bound !== undefined && bound < Number.MAX_SAFE_INTEGER);
  const low = from === undefined ? "" : `${from === above ? "above " : ""}${tidy(from)}`;
  const high = to === undefined ? "" : `${to === below ? "below " : ""}${tidy(to)}`;
  if (low === "" && high === "") return undefined;
  if (high === "") return from === above ? low : `${low} or more`;
  return low === "" ? `up to ${high}` : `${low} to ${high}`;
}

function counted(least: number | undefined, most: number | undefined, what: string): string | undefined {
  if (least === undefined && most === undefined) return undefined;
  if (least === most) return `${least} ${what}`;
  if (most === undefined) return `${least} ${what} or more`;
  return least === undefined ? `at most ${most} ${what}` : `${least} to ${most} ${what}`;
}

/** Six digits tell every limit; those that come from π would show sixteen. */
function tidy(value: number): string {
  return String(Number(value.toPrecision(6)));
}
