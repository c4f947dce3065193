/**
 * Plain tables: a head, a rule, rows. The only file that knows the table library.
 */
import Table from "cli-table3";

export interface Column {
  readonly head: string;
  /** Numbers stand better to the right. Default left. */
  readonly align?: "left" | "right";
}

/** Signs that would frame the table; only the rule under the head is kept. */
const FRAME = {
  top: "",
  "top-mid": "",
  "top-left": "",
  "top-right": "",
  bottom: "",
  "bottom-mid": "",
  "bottom-left": "",
  "bottom-right": "",
  left: "",
  "left-mid": "",
  right: "",
  "right-mid": "",
  mid: "─",
  "mid-mid": "─",
  middle: " ",
};

/** A table as text, without a line break at its end. */
export function showTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const table = new Table({
    head: columns.map((column) => column.head),
    colAligns: columns.map((column) => column.align ?? "left"),
    chars: FRAME,
    style: { head: [], border: [], compact: true, "padding-left": 0, "padding-right": 1 },
  });
  for (const row of rows) table.push([...row]);
  return table
    .toString()
    .split("\n")
    .map((line) => line.trimEnd())
    .join("\n");
}
