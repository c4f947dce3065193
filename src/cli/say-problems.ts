/**
 * Errors as the program tells them.
 */
import type { AnnuletError } from "../index.js";
import { describeProblem } from "../toolbox/index.js";
import { type Io, say } from "./io.js";
import { tint } from "./tint.js";
import { sayWarnings } from "./warnings.js";

/** Tells on standard error what had been noticed before a failure, then all its problems. */
export function sayProblems(io: Io, { warnings, problems }: AnnuletError): void {
  sayWarnings(io, warnings);
  for (const problem of problems) say(io, `${errorMark(io)} ${describeProblem(problem)}`);
}

/** What an error's line begins with. */
export function errorMark(io: Io): string {
  return tint(io, io.stderr, "red", "error:");
}
