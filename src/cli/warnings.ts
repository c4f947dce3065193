/**
 * Warnings as the program tells them.
 */
import type { Warning } from "../index.js";
import { describeProblem } from "../toolbox/index.js";
import { type Io, say } from "./io.js";
import { tint } from "./tint.js";

/** Advice on the size is no fault of the design: it is told once, where the ring is made. */
const ADVICE = "size-advice-";

/**
 * Tells warnings on standard error, one after the other.
 *
 * @param advice whether advice on the size is told too; default not
 */
export function sayWarnings(io: Io, warnings: readonly Warning[], advice: "advice" | "none" = "none"): void {
  const mark = tint(io, io.stderr, "yellow", "warning:");
  const told = warnings.filter(({ code }) => advice === "advice" || !code.startsWith(ADVICE));
  for (const warning of told) say(io, `${mark} ${describeProblem(warning)}`);
}
