/**
 * The table of every example's union.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { milliseconds, ratio } from "./cells.js";
import type { ExampleRow } from "./examples.js";
import { WANTED } from "./wanted.js";

export function showExamples(rows: readonly ExampleRow[]): string {
  const columns: Column[] = [
    { head: "example" },
    { head: "road" },
    { head: "beads", align: "right" },
    { head: "triangles", align: "right" },
    { head: "CPU ms", align: "right" },
    { head: "of one union", align: "right" },
    { head: "times faster", align: "right" },
    { head: "why" },
  ];
  const cells = rows.map(({ name, road, reason, beads, triangles, own, reference }) => [
    ...[name, road, String(beads), String(triangles)],
    ...[milliseconds(own.cpu), milliseconds(reference.cpu), ratio(reference.cpu / own.cpu), reason],
  ]);
  const reached = rows.filter(({ own, reference }) => reference.cpu / own.cpu >= WANTED.everyExample).length;
  const what = `union with all that is needed for it; ${reached} of ${rows.length} at least ${WANTED.everyExample} times faster`;
  return `${what}\n${showTable(columns, cells)}`;
}
