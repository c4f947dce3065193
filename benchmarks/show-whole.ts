/**
 * The tables of what a whole build takes: time and memory.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { megabytes, seconds, show, TIMES, times, wanted } from "./cells.js";
import { large } from "./designs.js";
import type { Memory } from "./memory.js";
import { WANTED } from "./wanted.js";
import type { WholeTiming } from "./whole.js";

export function showWhole(timings: readonly WholeTiming[]): string {
  const columns: Column[] = [{ head: "document to mesh, gate included" }, ...TIMES, wanted("ms"), { head: "result" }];
  const rows = timings.map((timing) => [timing.name, ...times(timing), `< ${timing.wanted}`, show(timing.checksum)]);
  return `${large.name}, whole builds\n${showTable(columns, rows)}`;
}

export function showMemory({ design, before, peak, checksum, finest, made }: Memory): string {
  const columns: Column[] = [
    { head: "most resident memory of a fresh process" },
    { head: "MB", align: "right" },
    wanted("MB"),
    { head: "result" },
  ];
  const rows = [
    ["loaded, nothing built", megabytes(1024 * before), "", ""],
    [`${design}, built`, megabytes(1024 * peak), "", show(checksum)],
    [
      `${finest}, annulet make`,
      megabytes(1024 * made.peak),
      `< ${megabytes(WANTED.peak)}`,
      `${show(made.report)}, ${megabytes(made.bytes)} MB of STL`,
    ],
  ];
  const { wall, cpu, report } = made;
  const enough = report.triangles >= WANTED.triangles ? "at least" : "NOT";
  const what = `${enough} ${WANTED.triangles} triangles, made in ${seconds(wall)} s (${seconds(cpu)} s CPU)`;
  return `memory; the last: ${what}\n${showTable(columns, rows)}`;
}
