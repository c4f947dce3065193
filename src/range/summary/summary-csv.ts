/**
 * The table of a range as CSV (RFC 4180), for spreadsheets.
 */
import { stringify } from "csv-stringify/sync";
import { showCell, summaryColumns } from "./columns.js";
import type { SummaryRow } from "./summary-rows.js";

/** Texts that spreadsheets would take for formulas. */
const FORMULA = /^[=+\-@\t\r]/;

const UNITS: ReadonlySet<string> = new Set(["mm", "g", "%", "mm³"]);

export function summaryCsv(axes: readonly string[], rows: readonly SummaryRow[]): string {
  const columns = summaryColumns(axes);
  const cells = rows.map((row) =>
    columns.map((column) => {
      const value = column.of(row);
      const text = showCell(value, column);
      return typeof value === "string" && FORMULA.test(text) && Number.isNaN(Number(text)) ? `'${text}` : text;
    }),
  );
  const head = columns.map(({ key, unit }) => (UNITS.has(unit) ? `${key} (${unit})` : key));
  return stringify([head, ...cells], { record_delimiter: "windows" });
}
