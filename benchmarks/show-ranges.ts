/**
 * The table of what ranges cost.
 */
import { type Column, showTable } from "../src/cli/table.js";
import type { RangeTiming } from "./ranges.js";

const COLUMNS: readonly Column[] = [
  { head: "rings of the README's design" },
  { head: "CPU s", align: "right" },
  { head: "of bare", align: "right" },
  { head: "of 1 process", align: "right" },
  { head: "wall s", align: "right" },
  { head: "of 1 process", align: "right" },
];

/** Digits of ratios. */
const DIGITS = 3;

export function showRanges(timings: readonly RangeTiming[]): string {
  const rows = timings.map(({ what, wall, cpu, ofBare, ofRange, wallOfRange }) => [
    what,
    (cpu / 1000).toFixed(1),
    ofBare.toFixed(DIGITS),
    ofRange.toFixed(DIGITS),
    (wall / 1000).toFixed(1),
    wallOfRange.toFixed(DIGITS),
  ]);
  const [, one, two] = timings;
  // Of a core that others use, wall says how busy they were.
  const second = `second core: ${((100 * one.wall) / (2 * two.wall)).toFixed(0)} % efficient by wall, on a quiet machine at least 85 are wanted`;
  return `ranges: CPU of all processes, wanted under 1.10 of bare, queue under 1.05 of the range\n${showTable(COLUMNS, rows)}\n${second}`;
}
