/**
 * Peak memory of fresh processes: one that builds the README's design, and `annulet make` of two million triangles.
 *
 * Linux counts the memory of the process that starts it as the new one's, so this is asked before anything large is
 * made here; `before` shows that it was.
 */
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Checksum } from "./checksum.js";
import { finest, large, text } from "./designs.js";
import { type Made, make } from "./make.js";

export interface Memory {
  readonly design: string;
  /** Most resident memory with annulet loaded, before the build, KiB. */
  readonly before: number;
  /** The same after the build, KiB. */
  readonly peak: number;
  readonly checksum: Checksum;
  /** The design of two million triangles, and what its file took. */
  readonly finest: string;
  readonly made: Made;
}

export function measureMemory(): Memory {
  process.stderr.write(`memory of ${large.name} and of ${finest.name}\n`);
  const child = fileURLToPath(new URL("peak-child.js", import.meta.url));
  const built = JSON.parse(execFileSync(process.execPath, [child], { encoding: "utf8" }));
  return { design: large.name, ...built, finest: finest.name, made: make(text(finest)) };
}
