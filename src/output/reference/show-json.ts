/**
 * JSON as a person would write it: what fits on a line stands on one.
 */

/** Longest line, in characters; chosen, that of the code. */
const LINE = 100;

/** Spaces by which what is inside stands in. */
const STEP = "  ";

/**
 * A JSON value as text over as few lines as stay readable.
 *
 * @param indent what each further line begins with
 * @param before what stands before the value on its first line
 */
export function showJson(value: unknown, indent = "", before = ""): string {
  const line = onOneLine(value);
  if (indent.length + before.length + line.length < LINE || typeof value !== "object" || value === null) return line;
  const inner = indent + STEP;
  const open = Array.isArray(value) ? ["[", "]"] : ["{", "}"];
  const parts = Array.isArray(value)
    ? value.map((entry) => showJson(entry, inner))
    : Object.entries(value).map(([key, entry]) => `${JSON.stringify(key)}: ${showJson(entry, inner, `"${key}": `)}`);
  return `${open[0]}\n${parts.map((part) => inner + part).join(",\n")}\n${indent}${open[1]}`;
}

function onOneLine(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([key, entry]) => `${JSON.stringify(key)}: ${onOneLine(entry)}`);
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}
