/**
 * The table of a range as JSON, for programs: every figure as it was measured.
 */
import type { SummaryRow } from "./summary-rows.js";

export function summaryJson(axes: readonly string[], rows: readonly SummaryRow[]): string {
  return `${JSON.stringify({ summary: 1, axes, variants: rows }, null, 1)}\n`;
}
