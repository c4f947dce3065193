/**
 * The sheet's tables of stones: what to order, and how rows came out.
 */
import type { OrderRow } from "../../stones/order-stones.js";
import type { StonesReport } from "../../stones/stone-report.js";
import { CARAT_DIGITS } from "../stones/order-csv.js";
import { type Column, paragraph, table } from "./html.js";

const right = (head: string): Column => ({ head, align: "right" });

const ORDER: readonly Column[] = [
  { head: "no." },
  { head: "cut" },
  { head: "gem" },
  right("size, mm"),
  right("count"),
  right("ct"),
  right("spares"),
  right("to order"),
];

const ROWS: readonly Column[] = [
  { head: "stones" },
  right("rows"),
  right("made"),
  right("gap, mm"),
  { head: "a stone fewer, or more" },
];

/** What to order, with the totals beneath. */
export function orderTable(rows: readonly OrderRow[], report: StonesReport | undefined, share: number): string {
  if (report === undefined) return "";
  const lines = rows.map(({ number, cutTitle, gemName, length, width, count, carats, spares, order }) => [
    String(number),
    cutTitle,
    gemName,
    length === width ? length.toFixed(2) : `${length.toFixed(2)} × ${width.toFixed(2)}`,
    String(count),
    carats.toFixed(CARAT_DIGITS),
    String(spares),
    String(order),
  ]);
  const total = `${report.count} stones, ${report.carats.toFixed(CARAT_DIGITS)} ct, ${report.grams.toFixed(CARAT_DIGITS)} g, by the trade's published formulas. Spares: ${Number((100 * share).toFixed(1))} % of each size, rounded up.`;
  return [table(ORDER, lines), paragraph(total)].join("\n");
}

/** Rows with their clear gaps, and the numbers beside those. */
export function rowTable(report: StonesReport | undefined): string {
  const lines = (report?.groups ?? []).flatMap(({ name, rows }) =>
    rows.map(({ rows: times, choices }) => {
      const made = choices.find((choice) => choice.made);
      const beside = choices.filter((choice) => !choice.made).map(({ count, gap }) => `${count} (${showGap(gap)})`);
      return [name, String(times), String(made?.count ?? 0), showGap(made?.gap ?? null), beside.join(", ")];
    }),
  );
  return lines.length === 0 ? "" : table(ROWS, lines);
}

/** Decimals of gaps, mm. */
const GAP_DIGITS = 3;

/** A gap as it is shown. */
function showGap(gap: number | null): string {
  return gap === null ? "–" : gap.toFixed(GAP_DIGITS);
}
