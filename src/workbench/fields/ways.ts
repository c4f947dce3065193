/**
 * The ways in which a field can be given, read of its reference: what kind of control each needs.
 */
import type { FieldReference, FormReference } from "../../index.js";
import { type NumberLimits, readLimits } from "./limits.js";

/** One way of giving a field. */
export type Way =
  | { readonly kind: "number"; readonly whole: boolean; readonly limits: NumberLimits }
  | { readonly kind: "text" }
  | { readonly kind: "switch" }
  /** One value that is fixed: a word of a choice. */
  | { readonly kind: "word"; readonly word: unknown }
  /** Two numbers. */
  | { readonly kind: "pair"; readonly limits: NumberLimits }
  /** A list of numbers or of texts, written with commas between them. */
  | { readonly kind: "numbers"; readonly whole: boolean }
  | { readonly kind: "texts" }
  /** An object; `form` where it is one of several. */
  | { readonly kind: "object"; readonly form: FormReference | undefined }
  | { readonly kind: "objects" }
  /** What only the text can show. */
  | { readonly kind: "written" };

/** All ways of a field, in the schema's order; never none. */
export function waysOf(reference: FieldReference): Way[] {
  const { choices, forms } = reference;
  const ways = kindsIn(reference.kind).flatMap((kind): Way[] => {
    if (kind === "word") return (choices ?? []).map((word) => ({ kind: "word", word }));
    if (kind === "object") return forms.length === 0 ? [plainObject] : forms.map((form) => ({ kind: "object", form }));
    return [wayOfKind(kind, reference)];
  });
  return ways.length === 0 ? [{ kind: "written" }] : ways;
}

const plainObject: Way = { kind: "object", form: undefined };

function wayOfKind(kind: string, { range }: FieldReference): Way {
  switch (kind) {
    case "number":
    case "whole number":
      return { kind: "number", whole: kind === "whole number", limits: readLimits(range) };
    case "text":
      return { kind: "text" };
    case "true or false":
      return { kind: "switch" };
    case "list of 2: number":
      return { kind: "pair", limits: readLimits(range) };
    case "list of numbers":
    case "list of whole numbers":
      return { kind: "numbers", whole: kind === "list of whole numbers" };
    case "list of texts":
    case "list of texts or objects":
      return { kind: "texts" };
    case "list of objects":
      return { kind: "objects" };
    default:
      return { kind: "written" };
  }
}

/** The kinds that a reference joins by "or": those in the plural belong to the list before them. */
export function kindsIn(words: string): string[] {
  const kinds: string[] = [];
  for (const part of words.replace("true or false", "true|false").split(" or ")) {
    const kind = part.replace("true|false", "true or false");
    const isPlural = kind.endsWith("s") && !kind.startsWith("list");
    const last = kinds.length - 1;
    if (isPlural && last >= 0) kinds[last] = `${kinds[last]} or ${kind}`;
    else kinds.push(kind);
  }
  return kinds;
}

/** Which way a value is given in, its place in the list; −1 where in none, or where nothing is given. */
export function wayOf(value: unknown, ways: readonly Way[]): number {
  return value === undefined ? -1 : ways.findIndex((way) => isGivenSo(value, way));
}

function isGivenSo(value: unknown, way: Way): boolean {
  switch (way.kind) {
    case "number":
      return typeof value === "number";
    case "text":
      return typeof value === "string";
    case "switch":
      return typeof value === "boolean";
    case "word":
      return value === way.word;
    case "object":
      return isObject(value) && (way.form === undefined || isInForm(value, way.form));
    case "pair":
      return isListOf(value, "number") && (value as unknown[]).length === 2;
    case "numbers":
      return isListOf(value, "number");
    case "texts":
      return isListOf(value, "string");
    case "objects":
      return Array.isArray(value) && value.every(isObject);
    case "written":
      return true;
  }
}

/** A form is known by its constant, which is its name, or else by the fields that it must have: `{system, value}`. */
function isInForm(value: Readonly<Record<string, unknown>>, { name, fields }: FormReference): boolean {
  const keys = keysOfForm(name);
  if (keys !== undefined) return keys.every((key) => Object.hasOwn(value, key));
  return fields.some((field) => Object.hasOwn(value, field.name) && value[field.name] === name);
}

/** The fields that tell a form without a name of its own. */
export function keysOfForm(name: string): string[] | undefined {
  return name.startsWith("{") ? name.slice(1, -1).split(", ") : undefined;
}

export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isListOf(value: unknown, type: "number" | "string"): boolean {
  return Array.isArray(value) && value.every((entry) => typeof entry === type);
}
