/**
 * Writes the tables of a range, and its manifest last. What stands there with the same bytes is left alone.
 */
import type { OpenPlan } from "../expand/open-plan.js";
import type { RecordedFile } from "../records/record.js";
import { summaryCsv } from "../summary/summary-csv.js";
import { summaryJson } from "../summary/summary-json.js";
import { summaryPage } from "../summary/summary-page.js";
import { type Outcome, summaryRows } from "../summary/summary-rows.js";
import { keepText } from "./store/keep-file.js";
import type { RangeStore } from "./store/range-store.js";

/** Names of the tables in the range's store. */
export const TABLES = ["index.html", "summary.csv", "summary.json"] as const;

/** @throws AnnuletError `output-failed`, `store-failed` */
export async function keepTables(
  store: RangeStore,
  open: OpenPlan,
  outcomes: readonly Outcome[],
): Promise<readonly RecordedFile[]> {
  const rows = summaryRows(outcomes);
  const { axisNames } = open;
  const texts: Record<(typeof TABLES)[number], string> = {
    "index.html": summaryPage(open.title, axisNames, rows),
    "summary.csv": summaryCsv(axisNames, rows),
    "summary.json": summaryJson(axisNames, rows),
  };
  const kept: RecordedFile[] = [];
  for (const path of TABLES) kept.push(await keepText(store, path, texts[path]));
  return kept;
}
