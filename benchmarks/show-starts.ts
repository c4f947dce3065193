/**
 * The table of what starts cost.
 */
import { type Column, showTable } from "../src/cli/table.js";
import type { StartTiming } from "./starts.js";

const COLUMNS: readonly Column[] = [
  { head: "start of" },
  { head: "CPU ms, least", align: "right" },
  { head: "of node alone", align: "right" },
  { head: "of three", align: "right" },
  { head: "wanted", align: "right" },
];

export function showStarts(timings: readonly StartTiming[]): string {
  const rows = timings.map(({ what, cpu, ofBare, ofThree, wanted }) => [
    what,
    cpu.toFixed(0),
    ofBare.toFixed(2),
    ofThree.toFixed(2),
    wanted === undefined ? "" : `≤ ${wanted}`,
  ]);
  return `starts, each in a process of its own\n${showTable(COLUMNS, rows)}`;
}
