/**
 * Problems with the command line itself.
 */
import type { Problem } from "../index.js";
import { STDOUT } from "./targets.js";

/** A problem with what was asked for, one sentence. */
export function usage(message: string): Problem {
  return { code: "usage", message };
}

/** What is wrong with the name of a file that should be SVG: nothing, or one problem. `what` begins the sentence. */
export function notSvg(output: string, what: string): Problem[] {
  if (output === STDOUT || output.toLowerCase().endsWith(".svg")) return [];
  return [
    { ...usage(`${what} is SVG.`), value: output, allowed: "a file that ends in .svg, or - for standard output" },
  ];
}
