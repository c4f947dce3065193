/**
 * Marks in words, for a summary and for the bench sheet.
 */
import type { MarkReport } from "../../marks/mark-report.js";

/** What the mark is: `"LOW WATER"` or `field for a hallmark`. */
export function nameMark({ text }: MarkReport): string {
  return text === null ? "field for a hallmark" : `"${text}"`;
}

/** Where it stands: `in the bore at 270°`. */
export function placeMark({ at, side, angle, v }: MarkReport): string {
  const where = { bore: "in the bore", seat: "on the seat", rail: `on the ${side} rail` }[at];
  return `${where} at ${round(angle, 1)}°${v === 0 ? "" : `, v ${round(v, 3)} mm`}`;
}

/** How it is made: `sunk 0.25 mm`. */
export function workOfMark({ mode, depth }: MarkReport): string {
  return mode === "plain" ? "level" : `${mode} ${round(depth, 3)} mm`;
}

/** The font's file without its folders; where fonts come from is told in the report. */
export function fontOfMark({ font }: MarkReport): string | undefined {
  return font?.split("/").at(-1);
}

/** No more decimals than it has. */
function round(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
