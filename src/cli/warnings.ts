/**
 * Warnings as the program tells them.
 */
import type { Warning } from "../index.js";
import { describeProblem } from "../toolbox/index.js";
import { type Io, say } from "./io.js";
import { tint } from "./tint.js";

/** Tells warnings on standard error, one after the other. */
export function sayWarnings(io: Io, warnings: readonly Warning[]): void {
  const mark = tint(io, io.stderr, "yellow", "warning:");
  for (const warning of warnings) say(io, `${mark} ${describeProblem(warning)}`);
}
