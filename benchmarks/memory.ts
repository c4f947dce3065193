/**
 * Peak memory of building the README's design, in a fresh process.
 *
 * Linux counts the memory of the process that starts it as the new one's, so this is asked before anything large is
 * made here; `before` shows that it was.
 */
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { Checksum } from "./checksum.js";
import { large } from "./designs.js";

export interface Memory {
  readonly design: string;
  /** Most resident memory with annulet loaded, before the build, KiB. */
  readonly before: number;
  /** The same after the build, KiB. */
  readonly peak: number;
  readonly checksum: Checksum;
}

export function measureMemory(): Memory {
  process.stderr.write(`memory of ${large.name}\n`);
  const child = fileURLToPath(new URL("peak-child.js", import.meta.url));
  return { design: large.name, ...JSON.parse(execFileSync(process.execPath, [child], { encoding: "utf8" })) };
}
