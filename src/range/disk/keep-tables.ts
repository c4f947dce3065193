/**
 * Writes the tables of a range, and its manifest last. What stands there with the same bytes is left alone.
 */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { writeWhole } from "../../disk/write-whole.js";
import type { OpenPlan } from "../expand/open-plan.js";
import type { RecordedFile } from "../records/record.js";
import { summaryCsv } from "../summary/summary-csv.js";
import { summaryJson } from "../summary/summary-json.js";
import { summaryPage } from "../summary/summary-page.js";
import { type Outcome, summaryRows } from "../summary/summary-rows.js";

/** Names of the tables in the range's folder. */
export const TABLES = ["index.html", "summary.csv", "summary.json"] as const;

/** @throws AnnuletError `output-failed` */
export function keepTables(folder: string, open: OpenPlan, outcomes: readonly Outcome[]): readonly RecordedFile[] {
  const rows = summaryRows(outcomes);
  const { axisNames } = open;
  const texts: Record<(typeof TABLES)[number], string> = {
    "index.html": summaryPage(open.title, axisNames, rows),
    "summary.csv": summaryCsv(axisNames, rows),
    "summary.json": summaryJson(axisNames, rows),
  };
  return TABLES.map((path) => ({ path, ...keepText(join(folder, path), texts[path]) }));
}

/** Writes a text where another stands or none. */
export function keepText(path: string, text: string): { readonly bytes: number; readonly sha256: string } {
  const bytes = new TextEncoder().encode(text);
  if (!isThere(path, bytes)) return writeWhole(path, [bytes]);
  return { bytes: bytes.length, sha256: createHash("sha256").update(bytes).digest("hex") };
}

function isThere(path: string, bytes: Uint8Array): boolean {
  try {
    return readFileSync(path).equals(bytes);
  } catch {
    return false;
  }
}
