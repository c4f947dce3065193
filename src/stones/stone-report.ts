/**
 * What the stones of a ring came to: how many of which size, their weights, and how rows came out.
 */
import { findCut } from "../gems/cuts/catalogue.js";
import type { Gem } from "../gems/gem.js";
import type { CutName, Stone } from "../gems/stone.js";
import { caratsOf, GRAMS_PER_CARAT } from "../gems/weight.js";
import { groupedBy } from "./grouped-by.js";
import type { PlacedRow, RowChoice } from "./place-along.js";
import type { PlacedStones } from "./place-stones.js";

/** All stones of a ring. */
export interface StonesReport {
  readonly groups: readonly StoneGroupReport[];
  readonly count: number;
  /** By the published formulas. */
  readonly carats: number;
  readonly grams: number;
}

/** One group of the document. */
export interface StoneGroupReport {
  readonly name: string;
  /** Where it stands in the document. */
  readonly path: string;
  readonly cut: CutName;
  /** Symbol of the gem. */
  readonly gem: string;
  /** Form of the setting. */
  readonly setting: string;
  readonly count: number;
  readonly carats: number;
  readonly grams: number;
  /** The largest first. */
  readonly sizes: readonly StoneSizeReport[];
  /** Rows that are alike told once; empty where the stones stand in none. */
  readonly rows: readonly StoneRowReport[];
  /** Stones that would reach beyond the pattern's end or the seat's edge, and are left out. */
  readonly left: number;
}

/** The stones of one size. */
export interface StoneSizeReport {
  /** mm, to a hundredth. */
  readonly length: number;
  readonly width: number;
  readonly count: number;
  /** Of all of them. */
  readonly carats: number;
}

/** Rows of a group that came out alike. */
export interface StoneRowReport {
  /** How many such rows there are. */
  readonly rows: number;
  /** mm in space: all round, or from the first stone's middle to the last one's. */
  readonly length: number;
  readonly closed: boolean;
  /** Number of stones and the clear gap between girdles in space, mm, null of a single stone: with fewer, as made, with more. */
  readonly choices: readonly StoneChoice[];
}

/** One number of stones that a row could have. */
export interface StoneChoice {
  readonly count: number;
  readonly gap: number | null;
  readonly made: boolean;
}

/** Weight of a stone by the published formula, carats. */
export function caratsOfStone(stone: Stone, gems: ReadonlyMap<string, Gem>): number {
  return caratsOf(findCut(stone.cut), gems.get(stone.gem) as Gem, stone, stone.proportions);
}

/** What the stones came to; undefined where there are none. */
export function reportStones({ stones, groups, gems }: PlacedStones): StonesReport | undefined {
  if (groups.length === 0) return undefined;
  const byGroup = groupedBy(stones, ({ group }) => group);
  const reports = groups.flatMap(({ name, rows, left, spec }, i): StoneGroupReport[] => {
    const own = (byGroup.get(i) ?? []).map(({ stone }) => stone);
    const weights = new Map(own.map((stone) => [stone, caratsOfStone(stone, gems)]));
    const sum = (some: readonly Stone[]) => some.reduce((total, stone) => total + (weights.get(stone) ?? 0), 0);
    const sizes = [...groupedBy(own, sizeKey).values()].map((alike): StoneSizeReport => {
      return { ...sizeOf(alike[0]), count: alike.length, carats: sum(alike) };
    });
    const carats = sum(own);
    return [
      {
        name,
        path: `stones[${i}]`,
        cut: spec.cut,
        gem: spec.gem,
        setting: spec.setting.form,
        count: own.length,
        carats,
        grams: carats * GRAMS_PER_CARAT,
        sizes: sizes.toSorted((a, b) => b.length - a.length),
        rows: alikeRows(rows),
        left,
      },
    ];
  });
  const total = (of: (group: StoneGroupReport) => number) => reports.reduce((sum, group) => sum + of(group), 0);
  return {
    groups: reports,
    count: stones.length,
    carats: total(({ carats }) => carats),
    grams: total(({ grams }) => grams),
  };
}

/** What all stones of a ring weigh, beside the metal. */
export type StoneTotals = Pick<StonesReport, "count" | "carats" | "grams">;

/** Decimals of sizes that are told apart, mm: no stone is ordered finer. */
const SIZE_DIGITS = 2;

/** Length and width as they are ordered. */
export function sizeOf({ length, width }: Pick<Stone, "length" | "width">): Pick<Stone, "length" | "width"> {
  return { length: Number(length.toFixed(SIZE_DIGITS)), width: Number(width.toFixed(SIZE_DIGITS)) };
}

/** The same for stones of one size. */
export function sizeKey(stone: Pick<Stone, "length" | "width">): string {
  const { length, width } = sizeOf(stone);
  return `${length} × ${width}`;
}

/** Decimals of gaps and lengths by which rows are told apart, mm. */
const ROW_DIGITS = 6;

function alikeRows(rows: readonly PlacedRow[]): StoneRowReport[] {
  const keyOf = ({ choices, length, closed }: PlacedRow) =>
    JSON.stringify([
      length.toFixed(ROW_DIGITS),
      closed,
      choices.map(({ count, gap }) => [count, gap?.toFixed(ROW_DIGITS)]),
    ]);
  return [...groupedBy(rows, keyOf).values()].map((alike) => {
    const [{ length, closed, choices }] = alike;
    return { rows: alike.length, length, closed, choices: choices.map(choiceOf) };
  });
}

function choiceOf({ count, gap, made }: RowChoice): StoneChoice {
  return { count, gap: gap ?? null, made };
}
