/**
 * The table of what changes cost.
 */
import { type Column, showTable } from "../src/cli/table.js";
import type { ChangeTiming } from "./changes.js";
import { large } from "./designs.js";

const COLUMNS: readonly Column[] = [
  { head: "change of" },
  { head: "CPU ms", align: "right" },
  { head: "opened anew", align: "right" },
  { head: "share", align: "right" },
  { head: "geometry stages", align: "right" },
  { head: "unions", align: "right" },
];

export function showChanges(timings: readonly ChangeTiming[]): string {
  const rows = timings.map(({ what, changed, anew, geometry, unions }) => [
    what,
    changed.toFixed(1),
    anew.toFixed(1),
    (changed / anew).toFixed(2),
    String(geometry),
    String(unions),
  ]);
  return `${large.name}, an opened ring changed, at draft\n${showTable(COLUMNS, rows)}`;
}
