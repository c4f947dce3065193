/**
 * What is wrong with a document, in words that a maker understands.
 */
import { closest, distance } from "fastest-levenshtein";
import type { z } from "zod";
import type { Problem } from "../errors.js";
import {
  bare,
  chooseBranch,
  definitionOf,
  discriminatorOf,
  knownKeys,
  type Schema,
  schemaAt,
  valueAt,
} from "./forms.js";
import { type Locate, type Path, showKey, showPath } from "./place.js";
import type { Plain } from "./plain.js";
import { allowedBy, showLiteral, showNumber } from "./words.js";

/** Everything that keeps a document from its schema; empty where nothing does. */
export function explain(schema: z.ZodType, document: Plain, locate: Locate): Problem[] {
  const { error } = schema.safeParse(document);
  return (error?.issues ?? []).flatMap((issue) => explainIssue(issue, { schema, document, base: [], locate }));
}

/** The value that issues speak of: a part of the document, with its schema. */
interface Part {
  readonly schema: Schema;
  readonly document: Plain | undefined;
  /** The part's path in the whole document. */
  readonly base: Path;
  readonly locate: Locate;
}

type Issue = z.core.$ZodIssue;

function explainIssue(issue: Issue, part: Part): Problem[] {
  const path = issue.path.map((key) => (typeof key === "number" ? key : String(key)));
  const value = valueAt(part.document, path);
  const schema = schemaAt(part.schema, part.document, path);
  if (issue.code === "unrecognized_keys") {
    return mixedForms(part, path, schema) ?? issue.keys.map((key) => unknownKey(part, path, key));
  }
  if (issue.code === "invalid_union") return explainUnion(issue, part, path);
  const allowed = schema === undefined ? undefined : allowedBy(schema);
  const hint = schema === undefined || issue.code === "custom" ? undefined : describe(schema);
  if (value === undefined && path.length > 0) return [missing(part, path, { allowed, hint })];
  return [
    problem(part, path, {
      code: "value-invalid",
      message: inWords(issue, value, allowed),
      value,
      allowed: issue.code === "custom" ? undefined : allowed,
      hint: nearest(value, issue.code === "invalid_value" ? issue.values : []) ?? hint,
    }),
  ];
}

function explainUnion(issue: z.core.$ZodIssueInvalidUnion, part: Part, path: Path): Problem[] {
  // A discriminator's issue points at the discriminator, whose schema is then the union.
  const discriminated = "discriminator" in issue && issue.discriminator !== undefined;
  const at = discriminated ? path.slice(0, -1) : path;
  const union = schemaAt(part.schema, part.document, at);
  const value = valueAt(part.document, at);
  if (union === undefined) {
    return [problem(part, path, { code: "value-invalid", message: "is not what belongs here", value })];
  }
  const allowed = allowedBy(union);
  const hint = describe(union);
  const def = definitionOf(union);
  if (def.type !== "union") return [problem(part, at, { code: "value-invalid", message: `must be ${allowed}`, value })];
  const key = discriminatorOf(def);
  if (key !== undefined) {
    const meant = valueAt(part.document, path);
    const forms = formsOf(issue, def);
    const choice = forms.map(showLiteral).join(", ");
    if (meant === undefined) return [missing(part, path, { allowed: choice, hint })];
    return [
      problem(part, path, {
        code: "value-invalid",
        message: `must be one of ${choice}`,
        value: meant,
        allowed: choice,
        hint: nearest(meant, forms) ?? hint,
      }),
    ];
  }
  if (value === undefined && at.length > 0) return [missing(part, at, { allowed, hint })];
  const choice = chooseBranch(def, value);
  if (choice.kind === "one") return explainBranch(choice.branch, part, at, value, allowed);
  if (choice.kind === "mixed") return mixedForms(part, at, union) ?? [];
  if (typeof value === "object" && value !== null && !Array.isArray(value) && choice.alike.length > 0) {
    const known = knownKeys(union, value);
    const unknown = Object.keys(value).filter((name) => !known.includes(name));
    if (unknown.length > 0) return unknown.map((name) => unknownKey(part, at, name));
    return [missing(part, at, { value, message: "says nothing yet", allowed, hint })];
  }
  const literals = def.options.flatMap((option) => [...(bare(option)._zod.values ?? [])]);
  return [
    problem(part, at, {
      code: "value-invalid",
      message: `must be ${allowed}, not ${kindOf(value)}`,
      value,
      allowed,
      hint: nearest(value, literals) ?? hint,
    }),
  ];
}

/** The problem of a value whose keys belong to different branches of a union; undefined for any other. */
function mixedForms(part: Part, path: Path, schema: Schema | undefined): Problem[] | undefined {
  const def = schema === undefined ? undefined : definitionOf(schema);
  if (schema === undefined || def?.type !== "union") return undefined;
  const value = valueAt(part.document, path);
  const choice = chooseBranch(def, value);
  if (choice.kind !== "mixed") return undefined;
  const ways = choice.branches.map(allowedBy);
  return [
    problem(part, path, {
      code: "value-invalid",
      message: `is given in ${ways.length} ways at once, ${ways.join(" and ")}`,
      value,
      allowed: allowedBy(schema),
      hint: "keep one of them",
    }),
  ];
}

/** Judges the value by the one branch that was meant; for plain values what is allowed is still the whole union. */
function explainBranch(branch: Schema, part: Part, at: Path, value: Plain | undefined, allowed: string): Problem[] {
  const issues = (branch as z.ZodType).safeParse(value).error?.issues ?? [];
  const inner: Part = { ...part, schema: branch, document: value, base: [...part.base, ...at] };
  if (typeof value === "object") return issues.flatMap((issue) => explainIssue(issue, inner));
  return issues.flatMap((issue) =>
    explainIssue(issue, inner).map((found) => ({
      ...found,
      allowed,
      message: issue.code === "invalid_value" ? `must be ${allowed}` : found.message,
    })),
  );
}

function formsOf(issue: z.core.$ZodIssueInvalidUnion, def: z.core.$ZodUnionDef): readonly unknown[] {
  if ("options" in issue && Array.isArray(issue.options)) return issue.options;
  const key = discriminatorOf(def);
  return def.options.flatMap((option) => {
    const field = key === undefined ? undefined : schemaAt(option, undefined, [key]);
    return field === undefined ? [] : [...(bare(field)._zod.values ?? [])];
  });
}

function unknownKey(part: Part, path: Path, key: string): Problem {
  const owner = schemaAt(part.schema, part.document, path);
  const value = valueAt(part.document, path);
  const known = owner === undefined ? [] : knownKeys(owner, value);
  return problem(
    part,
    [...path, key],
    {
      code: "unknown-key",
      message: `there is no ${showKey(key)} here`,
      value: valueAt(value, [key]),
      allowed: known.join(", "),
      hint: nearest(key, known),
    },
    "key",
  );
}

function missing(part: Part, path: Path, rest: Partial<Problem>): Problem {
  return problem(part, path, { code: "value-missing", message: "is missing", ...rest });
}

function problem(
  part: Part,
  path: Path,
  rest: Omit<Problem, "path" | "line" | "column">,
  of: "key" | "value" = "value",
): Problem {
  const whole = [...part.base, ...path];
  return { ...rest, path: showPath(whole), ...part.locate(whole, of) };
}

function inWords(issue: Issue, value: Plain | undefined, allowed: string | undefined): string {
  if (typeof value === "number" && !Number.isFinite(value)) {
    if (Number.isNaN(value)) return "is not a number";
    return value > 0 ? "is too large a number" : "is too far below 0";
  }
  switch (issue.code) {
    case "too_small":
    case "too_big":
      return sizeInWords(issue);
    case "invalid_type":
      if (typeof value === "number" && issue.expected === "int") return "must be a whole number";
      if (issue.expected === "number" || issue.expected === "int") return `is not a number, but ${kindOf(value)}`;
      return `must be ${KINDS[issue.expected] ?? allowed ?? issue.expected}, not ${kindOf(value)}`;
    case "invalid_value":
      return `must be ${issue.values.length === 1 ? "" : "one of "}${issue.values.map(showLiteral).join(", ")}`;
    default:
      return issue.message;
  }
}

function sizeInWords(issue: z.core.$ZodIssueTooSmall | z.core.$ZodIssueTooBig): string {
  const small = issue.code === "too_small";
  const limit = Number(small ? issue.minimum : issue.maximum);
  const units = { string: "characters", array: "entries" }[issue.origin as string];
  if (units !== undefined) {
    if (small) return limit === 1 ? "must not be empty" : `must have at least ${limit} ${units}`;
    return limit === 0 ? "must be empty" : `must have at most ${limit} ${units}`;
  }
  if (small)
    return issue.inclusive === false ? `must be above ${showNumber(limit)}` : `must be at least ${showNumber(limit)}`;
  return issue.inclusive === false ? `must be below ${showNumber(limit)}` : `must be at most ${showNumber(limit)}`;
}

const KINDS: Readonly<Record<string, string>> = {
  object: "an object {…}",
  array: "a list […]",
  tuple: "a list […]",
  string: "text",
  boolean: "true or false",
};

function kindOf(value: Plain | undefined): string {
  if (value === null) return "null";
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "boolean") return String(value);
  return { string: "text", number: "a number", object: "an object" }[typeof value as "string" | "number" | "object"];
}

/** The description on the schema or below its wrappers: it says unit, range and default. */
function describe(schema: Schema): string | undefined {
  const { description } = schema as z.ZodType;
  return description ?? (bare(schema) as z.ZodType).description;
}

/** Longest text that a nearest one is sought for, in characters. */
const LONGEST_SLIP = 60;

/** Asks whether the nearest text was meant, unless more than half of it would have to change. */
function nearest(value: unknown, choices: readonly unknown[]): string | undefined {
  const texts = choices.filter((choice) => typeof choice === "string");
  if (typeof value !== "string" || value.length > LONGEST_SLIP || texts.length === 0) return undefined;
  const found = closest(value.toLowerCase(), texts);
  const far = distance(value.toLowerCase(), found) > Math.max(value.length, found.length) / 2;
  return far ? undefined : `did you mean ${showLiteral(found)}?`;
}
