/**
 * An error as plain data, for what carries no errors whole: `structuredClone` and messages to workers keep of one no more
 * than its text, JSON nothing.
 */
import type { Problem, Warning } from "./problem.js";
import { safeText } from "./safe-text.js";

/** What an `AnnuletError` is in JSON, or in a message to a worker. */
export interface PlainError {
  readonly name: "AnnuletError";
  readonly message: string;
  /** Of the first problem. */
  readonly code: string;
  /** Values that JSON has no word for stand as text, and long ones are cut. */
  readonly problems: readonly Problem[];
  readonly warnings: readonly Warning[];
  /** What it came from, in words. */
  readonly cause?: { readonly name: string; readonly message: string };
}

/** Longest text that is passed on, characters; and longest JSON of other values, which are told as text beyond. Chosen. */
const LONGEST_VALUE = 2000;

/** An error with what was noticed before it. */
interface Told extends Omit<PlainError, "name" | "cause"> {
  readonly cause?: unknown;
}

/** Plain data all the way down. */
export function toPlain({ message, code, problems, warnings, cause }: Told): PlainError {
  return {
    name: "AnnuletError",
    message,
    code,
    problems: problems.map(plainProblem),
    warnings: warnings.map(plainProblem),
    ...(cause === undefined ? {} : { cause: plainCause(cause) }),
  };
}

/** Whether a value is what `toPlain` gave, whole, whatever way it came. */
export function isPlainError(value: unknown): value is PlainError {
  const { name, message, problems, warnings } = Object(value) as Partial<PlainError>;
  return (
    name === "AnnuletError" &&
    typeof message === "string" &&
    Array.isArray(problems) &&
    problems.length > 0 &&
    problems.every(isProblem) &&
    Array.isArray(warnings) &&
    warnings.every(isProblem)
  );
}

function isProblem(value: unknown): value is Problem {
  const { code, message } = Object(value) as Partial<Problem>;
  return typeof code === "string" && typeof message === "string";
}

function plainProblem({ value, ...words }: Problem): Problem {
  const told = Object.entries(words).filter(([, word]) => word !== undefined);
  const rest = Object.fromEntries(told) as unknown as Problem;
  return value === undefined ? rest : { ...rest, value: plainValue(value) };
}

function plainValue(value: unknown): unknown {
  if (typeof value === "string") return cut(value);
  const text = safeText(value);
  return text.length > LONGEST_VALUE ? cut(text) : JSON.parse(text);
}

/** What was cut once stays as it is. */
function cut(text: string): string {
  return text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE - 1)}…` : text;
}

function plainCause(cause: unknown): PlainError["cause"] {
  if (cause instanceof Error) return { name: cause.name, message: cause.message };
  return { name: "Error", message: safeText(cause) };
}
