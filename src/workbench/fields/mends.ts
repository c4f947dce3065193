/**
 * Where a finding of the rules leads to in the document, and the one value that mends it where one does.
 */
import type { BeadRunReport, Finding } from "../../index.js";
import { type Path, pathOf, valueAt } from "../state/json-text.js";

/** A value to be written. */
export interface Mend {
  readonly path: Path;
  readonly value: number;
}

/** Rules by the part of the document that they look at. */
const PARTS: Readonly<Record<string, Path>> = {
  shank: ["profile", "thickness"],
  wall: ["profile"],
  side: ["profile"],
  heavy: ["profile", "thickness"],
  corner: ["profile", "outside"],
  edge: ["profile", "outside"],
  bead: ["beads"],
  marks: ["lettering"],
};

/** New sizes are whole hundredths of a millimetre. */
const DIGITS = 100;

/** What a figure may be off by rounding. */
const NEAR = 1e-6;

/** The part of the document that a finding is about: the run of its beads, the pattern where nothing nearer is known. */
export function placeOfFinding(finding: Finding, runs: readonly BeadRunReport[]): Path {
  if (finding.rule === "bead") return pathOf(runOf(finding, runs)?.path ?? "beads");
  return PARTS[finding.rule] ?? ["pattern", "regions"];
}

/**
 * Undefined where no single number mends it. A shank that is too thin asks for the missing thickness, a bead that is too small
 * for the least diameter.
 */
export function mendOf(finding: Finding, document: unknown, runs: readonly BeadRunReport[]): Mend | undefined {
  const missing = finding.limit - finding.figure;
  if (finding.rule === "shank" && missing > 0) {
    const path = ["profile", "thickness"];
    const thickness = valueAt(document, path);
    return typeof thickness === "number" ? { path, value: up(thickness + missing) } : undefined;
  }
  const run = finding.rule === "bead" && missing > 0 ? runOf(finding, runs) : undefined;
  if (run === undefined) return undefined;
  const key = ["diameter", "to", "alternate"].find((name) =>
    isNear(valueAt(document, [...pathOf(run.path), name]), finding.figure),
  );
  return key === undefined ? undefined : { path: [...pathOf(run.path), key], value: up(finding.limit) };
}

function runOf({ figure }: Finding, runs: readonly BeadRunReport[]): BeadRunReport | undefined {
  return runs.find(({ diameterMin }) => isNear(diameterMin, figure));
}

function isNear(value: unknown, figure: number): boolean {
  return typeof value === "number" && Math.abs(value - figure) < NEAR;
}

function up(value: number): number {
  return Math.ceil(value * DIGITS - NEAR) / DIGITS;
}
