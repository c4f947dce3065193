/**
 * The ordering table as CSV (RFC 4180), for spreadsheets: a point in numbers, lines that end in CR LF.
 */
import type { OrderRow } from "../../stones/order-stones.js";

const HEAD = ["no", "cut", "gem", "length mm", "width mm", "count", "carats", "spares", "order"];

/** Decimals of carats: small stones weigh some thousandths. */
export const CARAT_DIGITS = 3;

/** Decimals of sizes, mm. */
const SIZE_DIGITS = 2;

/** The table as text. */
export function orderCsv(rows: readonly Omit<OrderRow, "stones">[]): string {
  const lines = rows.map(({ number, cut, gem, length, width, count, carats, spares, order }) => [
    String(number),
    cut,
    gem,
    length.toFixed(SIZE_DIGITS),
    width.toFixed(SIZE_DIGITS),
    String(count),
    carats.toFixed(CARAT_DIGITS),
    String(spares),
    String(order),
  ]);
  return [HEAD, ...lines].map((line) => `${line.map(quoted).join(",")}\r\n`).join("");
}

/** Fields with commas, quotes or ends of lines stand in quotes; so does what a spreadsheet would take for a formula. */
function quoted(field: string): string {
  const plain = /^[=+\-@\t\r]/.test(field) ? `'${field}` : field;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
