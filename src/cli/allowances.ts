/**
 * Casting allowances as a table: the piece finished, as cast and as the master.
 */
import type { Allowances, WeightTable } from "../index.js";
import { allowanceRows, densitySpan, showGrams } from "../toolbox/index.js";
import { fixed, NOTHING } from "./show.js";
import { type Column, showTable } from "./table.js";

const COLUMNS: readonly Column[] = [
  { head: "" },
  { head: "finished", align: "right" },
  { head: "cast", align: "right" },
  { head: "master", align: "right" },
];

/** The table and what is to be known of it; without allowances that alone. */
export function describeAllowances(allowances: Allowances, weights: WeightTable): string {
  const { any, scale, notes } = allowances;
  if (!any) return notes.join("\n");
  const rows = allowanceRows(
    allowances,
    (value) => (value === null ? NOTHING : fixed(value)),
    (grams, symbol) => showGrams(grams, densitySpan(weights, symbol)),
  );
  const factors = `The master is ${fixed(scale.radial, 5)} times the casting across the finger axis, ${fixed(scale.axial, 5)} times along it.`;
  return [showTable(COLUMNS, rows), "", factors, ...notes].join("\n");
}
