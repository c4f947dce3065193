/**
 * Casting allowances as a table: the piece finished, as cast and as the master.
 */
import type { AllowanceColumn, Allowances } from "../index.js";
import { fixed, NOTHING } from "./show.js";
import { type Column, showTable } from "./table.js";

const COLUMNS: readonly Column[] = [
  { head: "" },
  { head: "finished", align: "right" },
  { head: "cast", align: "right" },
  { head: "master", align: "right" },
];

/** The table and what is to be known of it; without allowances that alone. */
export function describeAllowances({ any, finished, cast, master, scale, notes }: Allowances): string {
  if (!any) return notes.join("\n");
  const row = (name: string, show: (column: AllowanceColumn) => string) => [
    name,
    ...[finished, cast, master].map(show),
  ];
  const length = (value: number | null) => (value === null ? NOTHING : fixed(value));
  const rows = [
    row("bore, mm", ({ bore }) => length(bore)),
    row("width, mm", ({ width }) => length(width)),
    row("thickness, mm", ({ thickness }) => length(thickness)),
    row("wall under the seat, mm", ({ wall }) => length(wall)),
    row("relief, mm", ({ relief }) => length(relief)),
    row("volume, mm³", ({ volume }) => length(volume)),
    row("weight, g", ({ weight }) => length(weight)),
    row("weighed in", ({ material }) => material),
  ];
  const factors = `The master is ${fixed(scale.radial, 5)} times the casting across the finger axis, ${fixed(scale.axial, 5)} times along it.`;
  return [showTable(COLUMNS, rows), "", factors, ...notes].join("\n");
}
