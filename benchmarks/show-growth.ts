/**
 * The tables of growth.
 */
import { type Column, showTable } from "../src/cli/table.js";
import { microseconds, milliseconds, ratio, show, TIMES, times } from "./cells.js";
import type { Growth } from "./growth.js";

/** The reference is that the CPU time grows no faster than the beads: each further bead costs no more than those before. */
export function showByBeads({ byBeads }: Growth): string {
  const columns: Column[] = [
    { head: "a unit's union" },
    { head: "beads", align: "right" },
    { head: "of the unit", align: "right" },
    ...TIMES,
    { head: "µs CPU a bead", align: "right" },
    { head: "a further bead", align: "right" },
    { head: "result" },
  ];
  const rows = byBeads.map(({ name, beads, unitBeads, unite, checksum }, i) => [
    ...[name, String(beads), String(unitBeads), ...times(unite)],
    microseconds(unite.cpu / unitBeads),
    i === 0 ? "" : microseconds((unite.cpu - byBeads[i - 1].unite.cpu) / (unitBeads - byBeads[i - 1].unitBeads)),
    show(checksum),
  ]);
  const [first, last] = [byBeads[0], byBeads[byBeads.length - 1]];
  const [more, longer] = [last.unitBeads / first.unitBeads, last.unite.cpu / first.unite.cpu];
  const what = `beads of a unit × ${more.toFixed(1)}: CPU time × ${longer.toFixed(1)}; wanted: no faster than the beads`;
  return `growth with the beads; ${what}\n${showTable(columns, rows)}`;
}

/** The reference is the ring of fewest units: the unit's union is to take as long in all, whatever the copies take. */
export function showByUnits({ byUnits }: Growth): string {
  const columns: Column[] = [
    { head: "ring" },
    { head: "beads", align: "right" },
    ...timesOf("unit"),
    ...timesOf("copies"),
    { head: "result" },
  ];
  const rows = byUnits.map(({ name, beads, unite, copy, checksum }) => [
    ...[name, String(beads)],
    ...[unite, copy].flatMap((timing) => [
      milliseconds(timing.median),
      milliseconds(timing.cpu),
      ratio(timing.cpu / (timing === unite ? byUnits[0].unite : byUnits[0].copy).cpu),
    ]),
    show(checksum),
  ]);
  const what = "the same tile, ever more of them; wanted: a unit takes as long in all, only copying grows";
  return `growth with the repeats; ${what}\n${showTable(columns, rows)}`;
}

function timesOf(what: string): Column[] {
  return [`${what} ms`, "CPU ms", "of first"].map((head) => ({ head, align: "right" }));
}
