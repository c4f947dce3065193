/**
 * The rows of a range's tables: what became of each variant, and what changed from size to size.
 */
import type { KnownFigures } from "../figures/known-figures.js";
import type { MadeFigures, VariantRecord } from "../records/record.js";

/** A variant in the tables. */
export interface SummaryRow {
  /** In the plan, from 1. */
  readonly number: number;
  readonly name: string;
  readonly status: "made" | "left-out" | "failed";
  /** Why it was not made; empty where it was. */
  readonly why: string;
  /** Axis → value. */
  readonly shown: Readonly<Record<string, string>>;
  /** Of the made ring; of one left out what was known. */
  readonly figures: MadeFigures | KnownFigures | null;
  /** Where its files are, in the range's folder. */
  readonly files: readonly string[];
  /** What is other than in the size before, of the same options; empty for the first. */
  readonly change: string;
}

/** What became of a variant. */
export type Outcome =
  | {
      readonly number: number;
      readonly name: string;
      readonly shown: SummaryRow["shown"];
      readonly record: VariantRecord;
    }
  | { readonly number: number; readonly name: string; readonly shown: SummaryRow["shown"]; readonly failed: string };

/** In the plan's order. */
export function summaryRows(outcomes: readonly Outcome[]): readonly SummaryRow[] {
  const before = new Map<string, MadeFigures>();
  return outcomes
    .toSorted((a, b) => a.number - b.number)
    .map((outcome): SummaryRow => {
      const { number, name, shown } = outcome;
      const none = { number, name, shown, change: "", files: [] };
      if ("failed" in outcome) return { ...none, status: "failed", why: outcome.failed, figures: null };
      const { record } = outcome;
      if (record.kind === "left-out") return { ...none, status: "left-out", why: record.why, figures: record.figures };
      const { size: _, ...options } = shown;
      const key = JSON.stringify(options);
      const last = before.get(key);
      before.set(key, record.figures);
      const change = last === undefined || !("size" in shown) ? "" : changeOf(last, record.figures);
      const files = record.files.map(({ path }) => path);
      return { ...none, status: "made", why: "", figures: record.figures, files, change };
    });
}

/** What a table does not show is no change: half of its last digit. */
const LEAST = { tile: 5e-4, percent: 5e-4 } as const;

function changeOf(before: MadeFigures, now: MadeFigures): string {
  const parts: string[] = [];
  const counted = (from: number | null, to: number | null, word: string) => {
    if (from === null || to === null || from === to) return;
    const more = to - from;
    parts.push(`${Math.abs(more)} ${word}${Math.abs(more) === 1 ? "" : "s"} ${more > 0 ? "more" : "fewer"}`);
  };
  counted(before.repeats, now.repeats, "tile");
  const tile = (now.tileWidth ?? 0) - (before.tileWidth ?? 0);
  if (Math.abs(tile) >= LEAST.tile) parts.push(`tile ${signed(tile, 3)} mm`);
  const width = now.bandWidth - before.bandWidth;
  if (Math.abs(width) >= LEAST.tile) parts.push(`band ${signed(width, 3)} mm`);
  const stretch = (now.stretch ?? 1) - (before.stretch ?? 1);
  if (Math.abs(stretch) >= LEAST.percent) parts.push(`stretch ${signed(100 * stretch, 1)} points`);
  counted(before.beads, now.beads, "bead");
  counted(before.stones, now.stones, "stone");
  parts.push(`${signed(now.weight - before.weight, now.weightDecimals)} g`);
  for (const code of Object.keys(now.warnings)) if (!(code in before.warnings)) parts.push(`new: ${code}`);
  return parts.join("; ");
}

function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return Number(text) === 0 ? text : `${value > 0 ? "+" : "−"}${text}`;
}
