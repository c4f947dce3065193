/**
 * What is wrong with a document, in words that a maker understands.
 */
import type { z } from "zod";
import { type Path, showKey, showPath } from "../base/errors/document-path.js";
import { nearest } from "../base/errors/nearest.js";
import type { Problem } from "../base/errors.js";
import {
  bare,
  chooseBranch,
  definitionOf,
  discriminatorOf,
  knownKeys,
  literalsOf,
  type Schema,
  schemaAt,
  valueAt,
} from "./forms.js";
import { inWords, kindOf } from "./phrases.js";
import type { Locate } from "./place.js";
import { isPlainObject, type Plain } from "./plain.js";
import { allowedBy, showLiteral } from "./words.js";

/**
 * What keeps a document from its schema, by the issues that reading it gave. Only as many as `most` are worked out, and a
 * few more where one part has several.
 */
export function explain(issues: readonly z.core.$ZodIssue[], document: Omit<Part, "base">): Problem[] {
  const part: Part = { ...document, base: [] };
  return issues.slice(0, part.most).flatMap((issue) => explainIssue(issue, part));
}

/** The value that issues speak of: a part of the document, with its schema. */
interface Part {
  readonly schema: Schema;
  readonly document: Plain | undefined;
  /** The part's path in the whole document. */
  readonly base: Path;
  readonly locate: Locate;
  /** How many problems are wanted. */
  readonly most: number;
}

function explainIssue(issue: z.core.$ZodIssue, part: Part): Problem[] {
  const path = issue.path.map((key) => (typeof key === "number" ? key : String(key)));
  const value = valueAt(part.document, path);
  const schema = schemaAt(part.schema, part.document, path);
  if (issue.code === "unrecognized_keys") {
    return mixedForms(part, path, schema) ?? issue.keys.slice(0, part.most).map((key) => unknownKey(part, path, key));
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
      ...(issue.code === "custom"
        ? saidWith(issue)
        : { allowed, hint: nearest(value, issue.code === "invalid_value" ? issue.values : []) ?? hint }),
    }),
  ];
}

/** What a rule between fields says beside its message. */
function saidWith({ params }: z.core.$ZodIssueCustom): Pick<Problem, "allowed" | "hint"> {
  const text = (value: unknown) => (typeof value === "string" ? value : undefined);
  return { allowed: text(params?.allowed), hint: text(params?.hint) };
}

function explainUnion(issue: z.core.$ZodIssueInvalidUnion, part: Part, path: Path): Problem[] {
  // A discriminator's issue points at the discriminator.
  const at = "discriminator" in issue ? path.slice(0, -1) : path;
  const union = schemaAt(part.schema, part.document, at);
  const def = union === undefined ? undefined : definitionOf(union);
  const value = valueAt(part.document, at);
  if (union === undefined || def?.type !== "union") {
    return [problem(part, at, { code: "value-invalid", message: "is not what belongs here", value })];
  }
  const allowed = allowedBy(union);
  const hint = describe(union);
  const discriminator = discriminatorOf(def);
  if (discriminator !== undefined) {
    const forms = def.options.flatMap((option) => literalsOf(option, discriminator));
    return [explainForm(part, [...at, discriminator], forms, hint)];
  }
  if (value === undefined && at.length > 0) return [missing(part, at, { allowed, hint })];
  const choice = chooseBranch(def, value);
  if (choice.kind === "one") return explainBranch(choice.branch, part, at, value, allowed);
  if (choice.kind === "mixed") return mixedForms(part, at, union) ?? [];
  if (isPlainObject(value) && choice.alike.length > 0) {
    const known = knownKeys(union, value);
    const unknown = Object.keys(value).filter((name) => !known.includes(name));
    if (unknown.length > 0) return unknown.slice(0, part.most).map((name) => unknownKey(part, at, name));
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
  const issues = (branch as z.ZodType).safeParse(value).error?.issues.slice(0, part.most) ?? [];
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

/** The form named by a discriminator is missing or unknown. */
function explainForm(part: Part, path: Path, forms: readonly unknown[], hint: string | undefined): Problem {
  const value = valueAt(part.document, path);
  const allowed = forms.map(showLiteral).join(", ");
  if (value === undefined) return missing(part, path, { allowed, hint });
  const message = `must be one of ${allowed}`;
  return problem(part, path, { code: "value-invalid", message, value, allowed, hint: nearest(value, forms) ?? hint });
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

/** The description on the schema or below its wrappers: it says unit, range and default. */
function describe(schema: Schema): string | undefined {
  const { description } = schema as z.ZodType;
  return description ?? (bare(schema) as z.ZodType).description;
}
