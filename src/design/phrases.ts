/**
 * Says in words what is wrong with one value.
 */
import type { z } from "zod";
import type { Plain } from "./plain.js";
import { showLiteral, showNumber } from "./words.js";

/** A sentence without its subject: `must be above 0`. */
export function inWords(issue: z.core.$ZodIssue, value: Plain | undefined, allowed: string | undefined): string {
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
  const [open, closed] = small ? ["above", "at least"] : ["below", "at most"];
  return `must be ${issue.inclusive === false ? open : closed} ${showNumber(limit)}`;
}

const KINDS: Readonly<Record<string, string>> = {
  object: "an object {…}",
  array: "a list […]",
  tuple: "a list […]",
  string: "text",
  boolean: "true or false",
};

/** What kind of value it is, with its article. Only options can be what is none of a document's. */
export function kindOf(value: unknown): string {
  if (value === null) return "null";
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "boolean") return String(value);
  return KINDS_OF[typeof value as keyof typeof KINDS_OF];
}

const KINDS_OF = {
  string: "text",
  number: "a number",
  object: "an object",
  function: "a function",
  symbol: "a symbol",
  bigint: "a big integer",
} as const;
