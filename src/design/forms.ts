/**
 * Walks the schema beside a value: which keys are known at a place, and which branch of a union was meant.
 */
import type { z } from "zod";
import type { Path } from "../base/errors/document-path.js";

import { isPlainObject, type Plain } from "./plain.js";

/** Any schema, to be told apart by its definition. */
export type Schema = z.core.$ZodType;

type Definition = z.core.$ZodTypes["_zod"]["def"];

/** A schema's definition below its defaults and other wrappers. */
export function definitionOf(schema: Schema): Definition {
  const { def } = (bare(schema) as z.core.$ZodTypes)._zod;
  return def;
}

/** The schema below its defaults and other wrappers. */
export function bare(schema: Schema): Schema {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "default":
    case "prefault":
    case "optional":
    case "nonoptional":
    case "nullable":
    case "readonly":
    case "catch":
      return bare(def.innerType);
    case "pipe":
      return bare(def.in);
    case "lazy":
      return bare(def.getter());
    default:
      return schema;
  }
}

/** The keys of an object schema with their schemas; undefined for other schemas. */
export function shapeOf(schema: Schema): Readonly<Record<string, Schema>> | undefined {
  const def = definitionOf(schema);
  return def.type === "object" ? def.shape : undefined;
}

/** Which branch of a union a value was meant for. */
export type Choice =
  | { readonly kind: "one"; readonly branch: Schema }
  /** Keys that belong to different branches. */
  | { readonly kind: "mixed"; readonly branches: readonly Schema[] }
  /** Nothing tells. `alike` are the branches of the value's own type. */
  | { readonly kind: "none"; readonly alike: readonly Schema[] };

/** Chooses by discriminator, by type, and among objects by the keys that only one of them knows. */
export function chooseBranch(def: z.core.$ZodUnionDef, value: Plain | undefined): Choice {
  const alike = def.options.filter((option) => takesType(option, value));
  const discriminator = discriminatorOf(def);
  if (discriminator !== undefined) {
    const meant = isPlainObject(value) ? value[discriminator] : undefined;
    const branch = alike.find((option) => literalsOf(option, discriminator).includes(meant));
    return branch === undefined ? { kind: "none", alike } : { kind: "one", branch };
  }
  if (alike.length === 1) return { kind: "one", branch: alike[0] };
  if (!isPlainObject(value)) return { kind: "none", alike };
  const branches = alike.filter((option) =>
    Object.keys(shapeOf(option) ?? {}).some(
      (key) => Object.hasOwn(value, key) && alike.every((other) => other === option || !knows(other, key)),
    ),
  );
  if (branches.length === 1) return { kind: "one", branch: branches[0] };
  return branches.length > 1 ? { kind: "mixed", branches } : { kind: "none", alike };
}

/** The key that tells a union's branches apart, if it was declared. */
export function discriminatorOf(def: z.core.$ZodUnionDef): string | undefined {
  const { discriminator } = def as Partial<z.core.$ZodDiscriminatedUnionDef>;
  return discriminator;
}

/** The values that a branch allows for a key. */
export function literalsOf(branch: Schema, key: string): readonly unknown[] {
  const field = shapeOf(branch)?.[key];
  if (field === undefined) return [];
  const def = definitionOf(field);
  if (def.type === "literal") return def.values;
  return def.type === "enum" ? Object.values(def.entries) : [];
}

/** The keys that are known at a place for this value. */
export function knownKeys(schema: Schema, value: Plain | undefined): readonly string[] {
  const def = definitionOf(schema);
  if (def.type === "object") return Object.keys(def.shape);
  if (def.type !== "union") return [];
  const choice = chooseBranch(def, value);
  if (choice.kind === "one") return knownKeys(choice.branch, value);
  const branches = choice.kind === "mixed" ? choice.branches : choice.alike;
  return [...new Set(branches.flatMap((branch) => knownKeys(branch, value)))];
}

/** The schema of a path's value, its wrappers left on; undefined where the value does not tell. */
export function schemaAt(schema: Schema, value: Plain | undefined, path: Path): Schema | undefined {
  if (path.length === 0) return schema;
  const [key, ...rest] = path;
  const def = definitionOf(schema);
  if (def.type === "union") {
    const choice = chooseBranch(def, value);
    if (choice.kind === "one") return schemaAt(choice.branch, value, path);
    const discriminator = discriminatorOf(def);
    return key === discriminator ? schema : undefined;
  }
  const inner = innerSchema(def, key);
  return inner === undefined ? undefined : schemaAt(inner, valueAt(value, [key]), rest);
}

/** The value at a path. */
export function valueAt(value: Plain | undefined, path: Path): Plain | undefined {
  return path.reduce<Plain | undefined>(
    (at, key) =>
      typeof at === "object" && at !== null && Object.hasOwn(at, key)
        ? (at as { readonly [key: string | number]: Plain })[key]
        : undefined,
    value,
  );
}

function innerSchema(def: Definition, key: string | number): Schema | undefined {
  switch (def.type) {
    case "object":
      return Object.hasOwn(def.shape, key) ? def.shape[key] : undefined;
    case "array":
      return def.element;
    case "record":
      return def.valueType;
    case "tuple":
      return def.items[Number(key)] ?? def.rest ?? undefined;
    default:
      return undefined;
  }
}

function knows(schema: Schema, key: string): boolean {
  return Object.hasOwn(shapeOf(schema) ?? {}, key);
}

function takesType(schema: Schema, value: Plain | undefined): boolean {
  const def = definitionOf(schema);
  switch (def.type) {
    case "object":
      return isPlainObject(value);
    case "array":
    case "tuple":
      return Array.isArray(value);
    case "enum":
      return Object.values(def.entries).some((entry) => typeof entry === typeof value);
    case "literal":
      return def.values.some((entry) => typeof entry === typeof value);
    case "union":
      return def.options.some((option) => takesType(option, value));
    default:
      return def.type === typeof value;
  }
}
