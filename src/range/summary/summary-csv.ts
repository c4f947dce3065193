/**
 * The table of a range as CSV (RFC 4180), for spreadsheets.
 */
import { stringify } from "csv-stringify/sync";
import { showCell, summaryColumns } from "./columns.js";
import type { SummaryRow } from "./summary-rows.js";

/** Texts that spreadsheets would take for formulas. */
const FORMULA = /^[=+\-@\t\r]/;

export function summaryCsv(axes: readonly string[], rows: readonly SummaryRow[]): string {
  const columns = summaryColumns(axes);
  const cells = rows.map((row) =>
    columns.map((column) => {
      const value = column.of(row);
      const text = showCell(value, column);
      return typeof value === "string" && FORMULA.test(text) && Number.isNaN(Number(text)) ? `'${text}` : text;
    }),
  );
  const head = columns.map(({ key, unit }) => (unit === "" ? key : `${key} (${unit})`));
  return stringify([head, ...cells], { record_delimiter: "windows" });
}
