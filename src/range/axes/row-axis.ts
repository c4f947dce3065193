/**
 * The axis whose values are rows: several places of the design at once, from the plan or from a CSV file.
 */
import { parse } from "csv-parse/sync";
import { AnnuletError } from "../../base/errors.js";
import type { DocumentChange } from "../../design/change-document.js";
import type { Plain } from "../../design/plain.js";
import { readWritten, readWrittenSize } from "../../design/written-value.js";
import type { Axis } from "./axis.js";
import { asWritten } from "./size-axis.js";
import { lastName, requirePath, showValue } from "./value-axis.js";

/** One row: path → value. What it does not name stays as it is in the design. */
export type Row = Readonly<Record<string, Plain>>;

/**
 * @param where the axis stands in the plan, for errors
 * @throws AnnuletError `change-invalid`, `rows-malformed`
 */
export function rowAxis(rows: readonly Row[], where: string): Axis {
  const paths = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  for (const path of paths) requirePath(path, where);
  const names = uniqueNames(paths, where);
  return {
    names,
    length: rows.length,
    at(index) {
      const row = rows[index];
      const changes = paths.flatMap((path): DocumentChange[] =>
        row[path] === undefined ? [] : [{ path, value: row[path] }],
      );
      const shown = paths.map((path, i) => [names[i], row[path] === undefined ? "" : showWritten(path, row[path])]);
      return { changes, shown: Object.fromEntries(shown) };
    },
  };
}

/** Of a size its label alone. */
function showWritten(path: string, value: Plain): string {
  if (path !== "size" || typeof value !== "object" || value === null || Array.isArray(value)) return showValue(value);
  const label = Object.values(value).at(-1);
  return typeof label === "string" || typeof label === "number" ? String(label) : showValue(value);
}

/** @throws AnnuletError `rows-malformed` where two columns would be called the same */
function uniqueNames(paths: readonly string[], where: string): string[] {
  const names = paths.map((path) => lastName(path, "value"));
  return names.map((name, i) => {
    const before = names.slice(0, i).filter((other) => other === name).length;
    const unique = before === 0 ? name : `${name}${before + 1}`;
    if (before > 0 && names.includes(unique)) throw malformed(`two columns are called ${unique}`, where);
    return unique;
  });
}

/**
 * The rows of a CSV text (RFC 4180), its head the paths. Sizes are written `iso:54`; other cells are JSON, or else text; an
 * empty cell leaves the design's own value.
 *
 * @param name of the file, for errors
 * @throws AnnuletError `rows-malformed`
 */
export function readRows(text: string, name: string, where: string): readonly Row[] {
  const [head, ...lines] = recordsOf(text, name, where);
  if (head === undefined || lines.length === 0) throw malformed(`${name} has no rows below its head`, where);
  const paths = head.map((cell) => cell.trim());
  const missing = paths.indexOf("");
  if (missing >= 0) throw malformed(`column ${missing + 1} of ${name} has no path in its head`, where);
  const twice = paths.find((path, i) => paths.indexOf(path) !== i);
  if (twice !== undefined) throw malformed(`${name} has two columns ${JSON.stringify(twice)}`, where);
  return lines.map((cells) => rowOf(paths, cells));
}

function rowOf(paths: readonly string[], cells: readonly string[]): Row {
  const fields = paths.flatMap((path, i): [string, Plain][] => {
    const cell = cells[i].trim();
    if (cell === "") return [];
    const size = path === "size" ? readWrittenSize(cell) : undefined;
    if (size === undefined) return [[path, readWritten(cell)]];
    return [[path, "value" in size ? { ...size, value: asWritten(size.value) } : { ...size }]];
  });
  return Object.fromEntries(fields);
}

function recordsOf(text: string, name: string, where: string): string[][] {
  try {
    return parse(text, { bom: true, skip_empty_lines: true });
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause);
    throw malformed(`${name} is no table: ${said}`, where, cause);
  }
}

function malformed(message: string, path: string, cause?: unknown): AnnuletError {
  const allowed = "CSV: a head of paths in the design, then a row for each variant with as many cells";
  return new AnnuletError({ code: "rows-malformed", message, path, allowed }, { cause });
}
