/**
 * Which errors and signals mean which exit code.
 */
import { AnnuletError } from "../index.js";
import { EXIT } from "./exit.js";

/** Codes of errors by which a sound document fails a check on what was built from it. */
const CHECK_CODES: ReadonlySet<string> = new Set(["not-closed", "headroom"]);

/** Codes of errors that no document should bring about. */
const INTERNAL_CODES: ReadonlySet<string> = new Set([
  "internal",
  "kernel-failed",
  "triangulation-failed",
  "seam-mismatch",
  "mesh-malformed",
]);

/** Added to a signal's number when it ended the run, as shells do. */
const SIGNAL_BASE = 128;

/** Numbers of the signals that end a run (POSIX). */
const SIGNAL_NUMBERS = { SIGHUP: 1, SIGINT: 2, SIGTERM: 15 } as const;

export type EndingSignal = keyof typeof SIGNAL_NUMBERS;

/** Exit code of a run that a signal ended: 130 for Ctrl-C. */
export function exitCodeOfSignal(signal: EndingSignal): number {
  return SIGNAL_BASE + SIGNAL_NUMBERS[signal];
}

/** Exit code for a failure. One problem with the document outweighs a failed check, as that check was not of it all. */
export function exitCodeOfError(error: unknown): number {
  if (!(error instanceof AnnuletError)) return EXIT.internal;
  const codes = error.problems.map((problem) => problem.code);
  if (codes.some((code) => INTERNAL_CODES.has(code))) return EXIT.internal;
  return codes.every((code) => CHECK_CODES.has(code)) ? EXIT.check : EXIT.usage;
}
