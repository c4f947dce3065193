/**
 * The few pieces of HTML that the sheet is made of.
 */
import { escapeText } from "../drawing/svg.js";

/** A column of a table. Numbers stand better to the right. */
export interface Column {
  readonly head: string;
  readonly align?: "left" | "right";
}

/**
 * A table of plain texts.
 *
 * @param own index of a row that stands out; default none
 */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[], own?: number): string {
  const cell = (tag: "th" | "td", text: string, i: number) =>
    `<${tag}${columns[i].align === "right" ? ' class="number"' : ""}>${escapeText(text)}</${tag}>`;
  const line = (tag: "th" | "td", texts: readonly string[], stands = false) =>
    `<tr${stands ? ' class="own"' : ""}>${texts.map((text, i) => cell(tag, text, i)).join("")}</tr>`;
  const head = line(
    "th",
    columns.map((column) => column.head),
  );
  return `<table><thead>${head}</thead><tbody>${rows.map((row, i) => line("td", row, i === own)).join("\n")}</tbody></table>`;
}

/** A part of the sheet beneath its heading; empty where there is nothing in it. */
export function section(name: string, heading: string, ...content: readonly string[]): string {
  const inside = content.filter((part) => part !== "").join("\n");
  return inside === "" ? "" : `<section class="${name}">\n<h2>${escapeText(heading)}</h2>\n${inside}\n</section>`;
}

export function paragraph(text: string): string {
  return `<p>${escapeText(text)}</p>`;
}
