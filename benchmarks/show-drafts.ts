/**
 * The table of what drafts cost.
 */
import { type Column, showTable } from "../src/cli/table.js";
import type { DraftTiming } from "./drafts.js";
import { median } from "./time-task.js";

const COLUMNS: readonly Column[] = [
  { head: "example" },
  { head: "draft, CPU ms", align: "right" },
  { head: "full, CPU ms", align: "right" },
  { head: "share", align: "right" },
];

export function showDrafts(timings: readonly DraftTiming[]): string {
  const rows = timings.map(({ name, draft, full }) => [
    name,
    draft.toFixed(0),
    full.toFixed(0),
    (draft / full).toFixed(2),
  ]);
  const middle = median(timings.map(({ draft, full }) => draft / full));
  return `A draft against the full build, each built anew\n${showTable(COLUMNS, rows)}\n\nmedian share ${middle.toFixed(2)}`;
}
