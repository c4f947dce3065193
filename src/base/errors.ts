/**
 * The one error type and the shape of warnings.
 *
 * A failure names what was wrong, where in the document, the value met, what is allowed and how to mend it.
 * Several problems found in one document travel together in `problems`.
 */

/** One thing that is wrong or worth knowing. */
export interface Problem {
  /** Stable, kebab-case name of the kind of problem, e.g. `fillet-too-large`. */
  readonly code: string;
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

/** Takes warnings while a stage works. */
export type Warn = (warning: Warning) => void;

/** What an error is made from beside its problems. */
export interface AnnuletErrorOptions extends ErrorOptions {
  /** What had been noticed before the failure. Default nothing. */
  readonly warnings?: readonly Warning[];
}

/**
 * Every failure of annulet. The first problem's fields are repeated on the error itself.
 *
 * @example
 * try {
 *   await build({ ...document, size: { system: "iso", value: 540 } });
 * } catch (error) {
 *   if (!(error instanceof AnnuletError)) throw error;
 *   for (const { code, path, allowed, hint } of error.problems) console.log(code, path, allowed, hint);
 * }
 */
export class AnnuletError extends Error {
  override readonly name = "AnnuletError";
  readonly code: string;
  readonly path: string | undefined;
  readonly value: unknown;
  readonly allowed: string | undefined;
  readonly hint: string | undefined;
  readonly problems: readonly Problem[];
  /** What had been noticed before the failure: often its cause. */
  readonly warnings: readonly Warning[];

  constructor(problem: Problem | readonly Problem[], options?: AnnuletErrorOptions) {
    const problems: readonly Problem[] = Array.isArray(problem) ? problem : [problem as Problem];
    super(problems.map(describeProblem).join("\n"), options);
    const [first] = problems;
    this.problems = problems;
    this.warnings = options?.warnings ?? [];
    this.code = first.code;
    this.path = first.path;
    this.value = first.value;
    this.allowed = first.allowed;
    this.hint = first.hint;
  }
}

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

/** Longest stretch of a value that is shown in a message, in characters. */
const SHOWN_VALUE_LENGTH = 120;

function showValue(value: unknown): string {
  const text = typeof value === "number" ? String(value) : toText(value);
  return text.length > SHOWN_VALUE_LENGTH ? `${text.slice(0, SHOWN_VALUE_LENGTH)}…` : text;
}

/** JSON where the value has one; some values (cycles, big integers) have none. */
function toText(value: unknown): string {
  try {
    return JSON.stringify(value) ?? String(value);
  } catch {
    return String(value);
  }
}
