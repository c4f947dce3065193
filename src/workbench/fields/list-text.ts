/**
 * Short lists as a line of text: entries with semicolons between them, or with commas where no number holds one.
 */
import { readNumber, writeNumber } from "./read-number.js";
import type { Way } from "./ways.js";

type ListWay = Way & { readonly kind: "pair" | "numbers" | "texts" };

/** Most entries that are read; chosen, far more than a line shows. */
const MOST = 1000;

/** Reads a list; undefined where an entry is refused. Semicolons part entries, else commas with a space behind, else commas. */
export function readList(text: string, way: ListWay): unknown[] | undefined {
  const line = text.trim().replace(/[,;]$/, "");
  const mark = line.includes(";") ? ";" : /,\s/.test(line) ? /,\s+/ : ",";
  const parts = line
    .split(mark)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  if (parts.length > MOST) return undefined;
  if (way.kind === "texts") return parts;
  const kind = { whole: way.kind === "numbers" && way.whole, limits: way.kind === "pair" ? way.limits : {} };
  const numbers = parts.map((part) => readNumber(part, kind));
  if (way.kind === "pair" && numbers.length !== 2) return undefined;
  const values = numbers.flatMap((read) => (typeof read === "object" ? [read.value] : []));
  return values.length === numbers.length ? values : undefined;
}

/** A list as `readList` reads it; empty for what is none. */
export function writeList(value: unknown, language: string): string {
  if (!Array.isArray(value)) return "";
  const parts = value.map((entry) => (typeof entry === "number" ? writeNumber(entry, language) : String(entry)));
  return parts.join(language === "de" ? "; " : ", ");
}
