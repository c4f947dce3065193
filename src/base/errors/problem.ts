/**
 * One problem or warning, and its words.
 */
import type { ProblemCode } from "./problem-code.js";
import { safeText } from "./safe-text.js";

/** One thing that is wrong or worth knowing. */
export interface Problem {
  /** Stable, kebab-case name of the kind of problem, e.g. `fillet-too-large`. */
  readonly code: ProblemCode | (string & {});
  /** One sentence that a maker understands; lengths in mm. */
  readonly message: string;
  /** Where in the design document, e.g. `profile.outside.edge` or `pattern.regions[2].path`. */
  readonly path?: string;
  /** The value that was met. */
  readonly value?: unknown;
  /** What would be allowed, in words. */
  readonly allowed?: string;
  /** How to mend it. */
  readonly hint?: string;
  /** Line in the source text, from 1, where the document came as text. */
  readonly line?: number;
  /** Column in the source text, from 1. */
  readonly column?: number;
}

/** A note that goes with a result: nothing was stopped, but the maker should know. */
export type Warning = Problem;

/** One problem as lines of text: the message, then place, value, what is allowed and the remedy where known. */
export function describeProblem(problem: Problem): string {
  const place = [
    problem.path,
    problem.line === undefined ? undefined : `line ${problem.line}, column ${problem.column}`,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
  const lines = [place === "" ? problem.message : `${place}: ${problem.message}`];
  if (problem.value !== undefined) lines.push(`  value:   ${showValue(problem.value)}`);
  if (problem.allowed !== undefined) lines.push(`  allowed: ${problem.allowed}`);
  if (problem.hint !== undefined) lines.push(`  mend it: ${problem.hint}`);
  return lines.join("\n");
}

/** Longest span of a value that is shown in a message, in characters. */
const SHOWN_VALUE_LENGTH = 120;

function showValue(value: unknown): string {
  const text = typeof value === "number" ? String(value) : safeText(value);
  return text.length > SHOWN_VALUE_LENGTH ? `${text.slice(0, SHOWN_VALUE_LENGTH)}…` : text;
}
