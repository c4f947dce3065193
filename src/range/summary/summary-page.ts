/**
 * The table of a range as one page, with pictures, that sorts and filters. It runs only its own script and style, each named by its
 * digest in the page's policy, and loads nothing but the pictures beside it.
 */
import { sha256 } from "../../base/sha256.js";
import { escapeText } from "../../output/drawing/svg.js";
import { base64 } from "../../output/sheet/base64.js";
import { type SummaryColumn, summaryColumns } from "./columns.js";
import type { SummaryRow } from "./summary-rows.js";
import { SUMMARY_SCRIPT } from "./summary-script.js";
import { SUMMARY_STYLE } from "./summary-style.js";

/** What of a row the script needs. */
interface PageRow {
  readonly number: number;
  readonly status: SummaryRow["status"];
  readonly warned: boolean;
  readonly picture: string;
  readonly files: readonly { readonly path: string; readonly ending: string }[];
  readonly cells: readonly (number | string | null)[];
}

/** How cells of some columns look. */
const LOOKS: Readonly<Record<string, string>> = { warnings: "warned", change: "long", why: "long why" };

export function summaryPage(title: string, axes: readonly string[], rows: readonly SummaryRow[]): string {
  const all = summaryColumns(axes);
  // What no variant has is not shown.
  const columns = all.filter((column, i) => i <= axes.length || rows.some((row) => !isEmpty(column.of(row))));
  const data = {
    columns: columns.map((column) => ({ ...headOf(column, rows), look: LOOKS[column.key] ?? "" })),
    axes: columns.slice(1, axes.length + 1).map(({ key, head }) => ({ key, head })),
    rows: rows.map((row) => pageRow(row, columns)),
  };
  return pageOf(title, factsOf(rows), JSON.stringify(data).replaceAll("<", "\\u003c"));
}

function headOf({ key, head, unit, decimals, of }: SummaryColumn, rows: readonly SummaryRow[]) {
  const number = rows.some((row) => typeof of(row) === "number");
  return { key, head, unit, number, ...(decimals === undefined ? {} : { decimals }) };
}

function isEmpty(value: number | string | null): boolean {
  return value === null || value === "" || value === 0;
}

function pageRow(row: SummaryRow, columns: readonly SummaryColumn[]): PageRow {
  const { number, status, figures } = row;
  const warned = figures !== null && "warnings" in figures && Object.keys(figures.warnings).length > 0;
  const picture = row.files.find((path) => path.endsWith(".png")) ?? "";
  const files = row.files.filter((path) => path !== picture);
  return {
    number,
    status,
    warned,
    picture: addressOf(picture),
    files: files.map((path) => ({ path: addressOf(path), ending: endingOf(path, row.name) })),
    cells: columns.map((column) => column.of(row)),
  };
}

/** Names may hold spaces. */
function addressOf(path: string): string {
  return path.split("/").map(encodeURIComponent).join("/");
}

function endingOf(path: string, name: string): string {
  return path.slice(path.indexOf(name) + name.length + 1);
}

/** Cells of the title block. */
function factsOf(rows: readonly SummaryRow[]): readonly (readonly [string, string])[] {
  const count = (status: SummaryRow["status"]) => rows.filter((row) => row.status === status).length;
  const made = rows.flatMap(({ status, figures }) => (status === "made" && figures !== null ? [figures] : []));
  const spread = (values: readonly number[], decimals: number, unit: string) => {
    if (values.length === 0) return "–";
    const [least, most] = values.reduce(
      ([low, high], one) => [Math.min(low, one), Math.max(high, one)],
      [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
    );
    const texts = [...new Set([least, most].map((value) => value.toFixed(decimals)))];
    return `${texts.join(" – ")} ${unit}`;
  };
  const present = (key: "tileWidth" | "stretch") => made.flatMap(({ [key]: value }) => value ?? []);
  const stretches = present("stretch").map((stretch) => 100 * (stretch - 1));
  return [
    ["variants", String(rows.length)],
    ["made", String(count("made"))],
    ["left out", String(count("left-out"))],
    ["failed", String(count("failed"))],
    [
      "weight",
      spread(
        made.map(({ weight }) => weight),
        2,
        "g",
      ),
    ],
    ["tile", spread(present("tileWidth"), 2, "mm")],
    ["stretch", spread(stretches, 1, "%")],
  ];
}

/** A policy's name of a text. */
function digest(text: string): string {
  const hex = sha256(text);
  const bytes = Uint8Array.from({ length: hex.length / 2 }, (_, i) => Number.parseInt(hex.slice(2 * i, 2 * i + 2), 16));
  return `'sha256-${base64(bytes)}'`;
}

function pageOf(title: string, facts: readonly (readonly [string, string])[], json: string): string {
  const policy = [
    "default-src 'none'",
    `script-src ${digest(SUMMARY_SCRIPT)}`,
    `style-src ${digest(SUMMARY_STYLE)}`,
    "img-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  const cells = facts.map(([term, value]) => `<div><dt>${term}</dt><dd>${escapeText(value)}</dd></div>`).join("");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeText(title)}</title>
<style>${SUMMARY_STYLE}</style>
</head>
<body>
<header><h1>${escapeText(title)}</h1><dl>${cells}</dl></header>
<form id="filters">
<label>search<input type="search" id="search" placeholder="any words of a row"></label>
<label>status<select id="status"><option value="">all</option><option value="made">made</option><option value="left-out">left out</option><option value="failed">failed</option></select></label>
<label class="check"><input type="checkbox" id="warned">with warnings</label>
<output id="count"></output>
</form>
<div class="sheet"><table><thead><tr id="heads"></tr></thead><tbody id="rows"></tbody></table></div>
<button id="more" type="button" hidden>show more</button>
<noscript>The table is drawn by a script; summary.csv has the same rows.</noscript>
<script type="application/json" id="range">${json}</script>
<script>${SUMMARY_SCRIPT}</script>
</body>
</html>
`;
}
