/**
 * Runs `annulet make` of the built package in processes of their own: STL and report are written, and read again.
 */
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import type { Report } from "../src/output/report/report.js";
import { type ChildUsage, PROGRAM, runChild } from "./run-child.js";

export interface Made extends ChildUsage {
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
    const usage = runChild([PROGRAM, "make", design, "-o", stl, "--report", report, "--quiet"]);
    return { ...usage, bytes: statSync(stl).size, report: JSON.parse(readFileSync(report, "utf8")) };
  } finally {
    rmSync(folder, { recursive: true });
  }
}
