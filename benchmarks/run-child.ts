/**
 * Runs node in a process of its own, and tells what that took.
 *
 * Linux counts the memory of the process that starts one as the new one's: peaks are to be asked while this one is small.
 */
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

export interface ChildUsage {
  /** From start to end of the process, ms. */
  readonly wall: number;
  /** Of all its threads, ms. */
  readonly cpu: number;
  /** Most resident memory, KiB. */
  readonly peak: number;
}

/** The built program. */
export const PROGRAM = fileURLToPath(new URL("dist/bin/main.js", import.meta.resolve("annulet/package.json")));

/** @param args what follows `node` on the command line */
export function runChild(args: readonly string[]): ChildUsage {
  const usage = new URL("child-usage.js", import.meta.url).href;
  const start = performance.now();
  const { status, stderr, output } = spawnSync(process.execPath, ["--import", usage, ...args], {
    stdio: ["ignore", "ignore", "pipe", "pipe"],
    encoding: "utf8",
  });
  const wall = performance.now() - start;
  if (status !== 0) throw new Error(`node ${args.join(" ")} failed: ${stderr}`);
  return { wall, ...JSON.parse(output[3] ?? "") };
}
