/**
 * Casting allowances as rows of a table: the piece finished, as cast and as the master.
 */
import type { AllowanceColumn, Allowances } from "../../casting/allowances/columns.js";

/**
 * A name and the three values of each row.
 *
 * @param show writes a length or a volume; null where there is none
 * @param grams writes a weight in a material
 */
export function allowanceRows(
  { finished, cast, master }: Pick<Allowances, "finished" | "cast" | "master">,
  show: (value: number | null) => string,
  grams: (value: number, symbol: string) => string,
): string[][] {
  const row = (name: string, of: (column: AllowanceColumn) => string) => [name, ...[finished, cast, master].map(of)];
  return [
    row("bore, mm", ({ bore }) => show(bore)),
    row("width, mm", ({ width }) => show(width)),
    row("thickness, mm", ({ thickness }) => show(thickness)),
    row("wall under the seat, mm", ({ wall }) => show(wall)),
    row("relief, mm", ({ relief }) => show(relief)),
    row("volume, mm³", ({ volume }) => show(volume)),
    row("weight, g", ({ weight, material }) => grams(weight, material)),
    row("weighed in", ({ material }) => material),
  ];
}
