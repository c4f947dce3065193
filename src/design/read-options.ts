/**
 * Reads the options of a function as documents are read: everything that is wrong is said at once, and what comes of it
 * is a copy, so that the caller's may change afterwards.
 */
import type { z } from "zod";
import { AnnuletError, type Problem } from "../base/errors.js";
import { explain } from "./explain-problems.js";
import { kindOf } from "./phrases.js";
import type { PlainObject } from "./plain.js";

/** Most problems that one error lists; nobody has more options. */
const MAX_PROBLEMS = 50;

/** Codes of documents, and what they are called of options. */
const CODES: Readonly<Record<string, string>> = {
  "unknown-key": "option-unknown",
  "value-invalid": "option-invalid",
  "value-missing": "option-missing",
};

/**
 * The options as their schema has them. What is undefined counts as left out. Functions, signals and bytes are the caller's
 * own, all else is copied.
 *
 * @param given what the caller passed; undefined for none
 * @throws AnnuletError with all problems: `option-unknown`, `option-invalid`, `option-missing`
 */
export function readOptions<Options>(schema: z.ZodType<Options>, given: unknown = {}): Options {
  try {
    const copy = fieldsOf(given);
    const { data, error } = schema.safeParse(copy);
    if (error === undefined) return data;
    const document = copy as PlainObject;
    const problems = explain(error.issues, { schema, document, locate: () => undefined, most: MAX_PROBLEMS });
    throw new AnnuletError(problems.slice(0, MAX_PROBLEMS).map(asOption));
  } catch (cause) {
    // A getter or a proxy of the caller's threw.
    throw cause instanceof AnnuletError ? cause : noObject("cannot be read", undefined, cause);
  }
}

/** An object's fields, those that it inherits among them. */
function fieldsOf(given: unknown): Readonly<Record<string, unknown>> {
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    throw noObject(`must be an object {…}, not ${kindOf(given)}`, given);
  }
  const fields: [string, unknown][] = [];
  for (const name in given) {
    const value: unknown = Reflect.get(given, name);
    if (value !== undefined) fields.push([name, value]);
  }
  // So that a field named __proto__ is one.
  return Object.fromEntries(fields);
}

function noObject(message: string, value: unknown, cause?: unknown): AnnuletError {
  const problem = { code: "option-invalid", message: `the options: ${message}`, value, allowed: "an object" };
  return new AnnuletError(problem, { cause });
}

function asOption(problem: Problem): Problem {
  return { ...problem, code: CODES[problem.code] ?? problem.code };
}
