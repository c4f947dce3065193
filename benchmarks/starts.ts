/**
 * What a start costs: node alone, node with three, with the library, and a cold `annulet make` of the README's design, in
 * turns, each in a process of its own. The least CPU of several runs is taken: what else runs on a machine only adds.
 */
import { large, text } from "./designs.js";
import type { Effort } from "./effort.js";
import { make } from "./make.js";
import { PROGRAM, runChild } from "./run-child.js";
import { WANTED } from "./wanted.js";

export interface StartTiming {
  readonly what: string;
  /** Least CPU of all threads, ms. */
  readonly cpu: number;
  /** Over node alone, and over node with three. */
  readonly ofBare: number;
  readonly ofThree: number;
  /** Most times of node with three that are wanted; undefined where nothing is. */
  readonly wanted: number | undefined;
}

const loading = (name: string) => () => runChild(["--input-type=module", "-e", `await import("${name}")`]);

const starts: readonly (readonly [what: string, start: () => { readonly cpu: number }, wanted?: number])[] = [
  ["node alone", () => runChild(["-e", "0"])],
  ["node, three", loading("three")],
  ["node, annulet", loading("annulet")],
  ["annulet --version", () => runChild([PROGRAM, "--version"])],
  [`annulet make, ${large.name}`, () => make(text(large)), WANTED.coldOfThree],
];

/** Fewer runs than this have seldom one that was left alone. */
const LEAST_RUNS = 5;

export function timeStarts({ calls }: Effort): StartTiming[] {
  process.stderr.write("starts\n");
  const runs = Array.from({ length: Math.max(LEAST_RUNS, calls) }, () => starts.map(([, start]) => start().cpu));
  const least = starts.map((_, i) => Math.min(...runs.map((run) => run[i])));
  const [bare, three] = least;
  return starts.map(([what, , wanted], i) => ({
    what,
    cpu: least[i],
    ofBare: least[i] / bare,
    ofThree: least[i] / three,
    wanted,
  }));
}
