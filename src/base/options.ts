/**
 * Options and arguments of tools that know nothing of documents: held to a table, so that no option goes by unread and nothing
 * has a wrong type.
 */
import { nearest } from "./errors/nearest.js";
import { AnnuletError, type Problem } from "./errors.js";

/** What one option may be. */
export interface OptionRule {
  readonly holds: (value: unknown) => boolean;
  /** In words. */
  readonly allowed: string;
  /** Whether it must be there. Default false. */
  readonly needed?: boolean;
}

/** A rule for each option. */
export type OptionRules<Options> = { readonly [Name in keyof Options]-?: OptionRule };

/**
 * Refuses options that are none. What is undefined counts as left out.
 *
 * @throws AnnuletError with all problems: `option-unknown` with the nearest name, `option-invalid`, `option-missing`
 */
export function requireOptions<Options extends object>(given: Options, rules: OptionRules<Options>): void {
  const asked: unknown = given;
  if (typeof asked !== "object" || asked === null || Array.isArray(asked)) {
    const problem = { code: "option-invalid", message: "the options are no object", allowed: "an object" };
    throw new AnnuletError({ ...problem, value: asked });
  }
  const known = Object.keys(rules);
  const table = new Map<string, OptionRule>(Object.entries(rules));
  const problems = heldTo(asked, table, "");
  for (const path in asked) {
    if (table.has(path)) continue;
    const value: unknown = Reflect.get(asked, path);
    const told = { code: "option-unknown", message: "there is no such option", path, value, allowed: known.join(", ") };
    if (value !== undefined) problems.push({ ...told, hint: nearest(path, known) });
  }
  if (problems.length > 0) throw new AnnuletError(problems);
}

/**
 * Refuses an argument without the fields that are read of it. Other fields may be there.
 *
 * @param name of the argument, under which its fields are told
 * @throws AnnuletError with all problems: `option-invalid`, `option-missing`
 */
export function requireFields<Fields extends object>(name: string, given: unknown, rules: OptionRules<Fields>): void {
  const told = { path: name, allowed: `an object with ${Object.keys(rules).join(", ")}` };
  if (given === undefined) throw new AnnuletError({ ...MISSING, ...told });
  // A function may have fields too, but none is meant.
  if (typeof given !== "object" || given === null) throw new AnnuletError({ ...INVALID, ...told, value: given });
  const problems = heldTo(given, new Map<string, OptionRule>(Object.entries(rules)), `${name}.`);
  if (problems.length > 0) throw new AnnuletError(problems);
}

/**
 * Refuses an argument that is not what belongs there.
 *
 * @throws AnnuletError `option-invalid`, `option-missing`
 */
export function requireArgument(name: string, given: unknown, rule: OptionRule): void {
  const problems = heldTo({ [name]: given }, new Map([[name, { ...rule, needed: true }]]), "");
  if (problems.length > 0) throw new AnnuletError(problems);
}

const MISSING = { code: "option-missing", message: "is missing" };
const INVALID = { code: "option-invalid", message: "is not what belongs here" };

/** What is wrong with the fields that rules are for. */
function heldTo(given: object, rules: ReadonlyMap<string, OptionRule>, within: string): Problem[] {
  const problems: Problem[] = [];
  for (const [name, { holds, allowed, needed: must = false }] of rules) {
    const value: unknown = Reflect.get(given, name);
    const told = { path: within + name, allowed };
    if (value === undefined && must) problems.push({ ...MISSING, ...told });
    else if (value !== undefined && !holds(value)) problems.push({ ...INVALID, ...told, value });
  }
  return problems;
}

/** A number from one to another, both included; infinities are none. */
export function numberFrom(least: number, most: number, unit = ""): OptionRule {
  const allowed = most === Number.POSITIVE_INFINITY ? `${least} or more` : `${least} to ${most}`;
  return {
    holds: (value) => typeof value === "number" && value >= least && value <= most && Number.isFinite(value),
    allowed: `a number, ${allowed}${unit === "" ? "" : ` ${unit}`}`,
  };
}

/** A number above 0. */
export function numberAbove0(unit: string): OptionRule {
  return {
    holds: (value) => typeof value === "number" && value > 0 && Number.isFinite(value),
    allowed: `a number above 0, ${unit}`,
  };
}

/** A whole number from one to another, both included. */
export function wholeFrom(least: number, most: number): OptionRule {
  const allowed = most === Number.POSITIVE_INFINITY ? `from ${least}` : `from ${least} to ${most}`;
  return {
    holds: (value) => Number.isInteger(value) && Number(value) >= least && Number(value) <= most,
    allowed: `a whole number ${allowed}`,
  };
}

/** Any number, for ranges that are told with more words. */
export const A_NUMBER: OptionRule = { holds: (value) => typeof value === "number", allowed: "a number" };

/** True or false. */
export const YES_OR_NO: OptionRule = { holds: (value) => typeof value === "boolean", allowed: "true or false" };

/** A text. */
export const TEXT: OptionRule = { holds: (value) => typeof value === "string", allowed: "text" };

/** A function. */
export const A_FUNCTION: OptionRule = { holds: (value) => typeof value === "function", allowed: "a function" };

/** A list whose items are all such. */
export function listOf(holds: OptionRule["holds"], allowed: string): OptionRule {
  return { holds: (value) => Array.isArray(value) && value.every(holds), allowed: `a list of ${allowed}` };
}

/** The rule for what must be there. */
export function needed(rule: OptionRule): OptionRule {
  return { ...rule, needed: true };
}

/** Bytes, from this realm or another. */
export const BYTES: OptionRule = {
  holds: (value) => Object.prototype.toString.call(value) === "[object Uint8Array]",
  allowed: "a Uint8Array",
};

/** What can be asked whether it is aborted, and tells when it is. */
export const SIGNAL: OptionRule = { holds: isSignal, allowed: "the signal of an AbortController" };

function isSignal(value: unknown): boolean {
  const { aborted, addEventListener, removeEventListener } = Object(value) as Partial<AbortSignal>;
  return (
    typeof aborted === "boolean" && typeof addEventListener === "function" && typeof removeEventListener === "function"
  );
}
