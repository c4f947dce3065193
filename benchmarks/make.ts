/**
 * Runs `annulet make` of the built package in processes of their own: STL and report are written, and read again.
 *
 * Linux counts the memory of the process that starts one as the new one's: peaks are to be asked while this one is small.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { Report } from "../src/output/report/report.js";

export interface Made {
  /** From start to end of the process, ms. */
  readonly wall: number;
  /** Of all its threads, ms. */
  readonly cpu: number;
  /** Most resident memory, KiB. */
  readonly peak: number;
  /** Size of the STL. */
  readonly bytes: number;
  readonly report: Pick<Report, "triangles" | "volume" | "closed">;
}

/** @param text the design document */
export function make(text: string): Made {
  const folder = mkdtempSync(path.join(os.tmpdir(), "annulet-bench-"));
  try {
    const [design, stl, report] = ["design.json", "ring.stl", "report.json"].map((name) => path.join(folder, name));
    writeFileSync(design, text);
    const usage = new URL("child-usage.js", import.meta.url).href;
    const program = fileURLToPath(new URL("dist/bin/main.js", import.meta.resolve("annulet/package.json")));
    const args = ["--import", usage, program, "make", design, "-o", stl, "--report", report, "--quiet"];
    const start = performance.now();
    const { status, stderr, output } = spawnSync(process.execPath, args, {
      stdio: ["ignore", "ignore", "pipe", "pipe"],
      encoding: "utf8",
    });
    const wall = performance.now() - start;
    if (status !== 0) throw new Error(`annulet make failed: ${stderr}`);
    const { cpu, peak } = JSON.parse(output[3] ?? "");
    return { wall, cpu, peak, bytes: statSync(stl).size, report: JSON.parse(readFileSync(report, "utf8")) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
