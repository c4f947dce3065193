/**
 * The one error type, and who takes warnings.
 *
 * A failure names what was wrong, where in the document, the value met, what is allowed and how to mend it.
 * Several problems found in one document travel together in `problems`.
 */
import { isPlainError, type PlainError, toPlain } from "./errors/plain-error.js";
import { describeProblem, type Problem, type Warning } from "./errors/problem.js";
import type { ProblemCode } from "./errors/problem-code.js";
import { safeText } from "./errors/safe-text.js";

export { describeProblem, type Problem, type Warning } from "./errors/problem.js";
export type { ProblemCode } from "./errors/problem-code.js";

/** Takes warnings while a stage works. */
export type Warn = (warning: Warning) => void;

/** What an error is made from beside its problems. */
export interface AnnuletErrorOptions extends ErrorOptions {
  /** What had been noticed before the failure. Default nothing. */
  readonly warnings?: readonly Warning[] | undefined;
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
  readonly code: ProblemCode | (string & {});
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

  /**
   * Plain data that says the same: what `JSON.stringify` writes of the error, and what a worker posts. `structuredClone`
   * would keep of the error itself its text alone.
   *
   * @example
   * const data = JSON.stringify(new AnnuletError({ code: "too-wide", message: "it is too wide" }));
   * console.log(AnnuletError.from(JSON.parse(data)).code); // too-wide
   */
  toJSON(): PlainError {
    return toPlain(this);
  }

  /**
   * The error that anything thrown comes to: an AnnuletError is itself, what `toJSON` gave is made one again, and all else
   * becomes the cause of one whose code is `internal`.
   */
  static from(thrown: unknown): AnnuletError {
    if (thrown instanceof AnnuletError) return thrown;
    if (isPlainError(thrown)) {
      const { problems, warnings, cause } = thrown;
      const own = cause === undefined ? {} : { cause: causeFrom(cause) };
      const again = new AnnuletError(problems, { warnings, ...own });
      // Long values were cut, so their words would be others.
      again.message = thrown.message;
      return again;
    }
    const message = thrown instanceof Error ? `${thrown.name}: ${thrown.message}` : safeText(thrown);
    return new AnnuletError({ code: "internal", message }, { cause: thrown });
  }
}

function causeFrom({ name, message }: Required<PlainError>["cause"]): Error {
  return Object.assign(new Error(message), { name });
}
