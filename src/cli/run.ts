/**
 * Runs one command line and says how it went.
 */

import { reasonOf } from "../disk/reason-of.js";
import { AnnuletError } from "../index.js";
import { EXIT } from "./exit.js";
import { exitCodeOfError } from "./exit-codes.js";
import { type Io, printJson, say } from "./io.js";
import { runCommand } from "./program.js";
import { errorMark, sayProblems } from "./say-problems.js";
import { Interrupted } from "./signals.js";

/**
 * Runs the program. Nothing is thrown: failures are told on standard error.
 *
 * @param words the command line without program and script
 * @returns the exit code
 */
export async function run(words: readonly string[], io: Io): Promise<number> {
  try {
    requireFolder();
    return await runCommand(words, io);
  } catch (error) {
    if (error instanceof Interrupted) {
      say(io, error.message);
      return error.exitCode;
    }
    const code = exitCodeOfError(error);
    if (error instanceof AnnuletError) {
      sayProblems(io, error);
      if (asksForJson(words)) printJson(io, { errors: error.problems });
    } else {
      say(io, `${errorMark(io)} ${error instanceof Error ? `${error.name}: ${error.message}` : String(error)}`);
    }
    if (code === EXIT.internal) sayInternal(error, io);
    return code;
  }
}

/** Whether data is to be JSON: then errors are as well, so that one document always comes, whatever becomes of the work. */
function asksForJson(words: readonly string[]): boolean {
  const end = words.indexOf("--");
  return (end === -1 ? words : words.slice(0, end)).includes("--json");
}

/** The system cannot tell where a folder is that somebody has deleted, so no path can be worked out. */
function requireFolder(): void {
  try {
    process.cwd();
  } catch (cause) {
    const message = `The folder that annulet was started in cannot be used: ${reasonOf(cause)}.`;
    throw new AnnuletError({ code: "folder-missing", message, hint: "change to a folder that is there" }, { cause });
  }
}

function sayInternal(error: unknown, io: Io): void {
  say(io, "This is a fault of annulet, not of your design. Please report it with the command line and the design.");
  if (io.env.ANNULET_DEBUG === "1") say(io, (error instanceof Error ? error.stack : undefined) ?? "no stack");
  else say(io, "ANNULET_DEBUG=1 shows where it happened.");
}
