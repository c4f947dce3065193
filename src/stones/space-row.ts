/**
 * Stones of a row at even clear gaps: the least distances in space between the girdles of neighbours are all the same.
 *
 * On a circle of equal stones one pair stands for all. Elsewhere each pair takes a length of the line beside its gap, nearly
 * the same wherever it stands: from an even row on, every pair is given the length that it took before and a gap that makes
 * the sum right, until all gaps are the same.
 */
import { type Convex, convexDistance } from "../base/math/convex-distance.js";

/** What a row is made of. */
export interface RowQuestion {
  /** mm, from the first stone's place to the last one's; all round where it is closed. */
  readonly length: number;
  readonly closed: boolean;
  /** Whether the line and the stones are alike everywhere. */
  readonly even: boolean;
  /** Whether only an even number of stones is as symmetric as the line. */
  readonly pairs: boolean;
  /** The girdle of the stone at a length along the line. */
  readonly girdleAt: (s: number) => Convex;
  /** The same exactly, where the other is only nearly so. Default: it is exact. */
  readonly exactAt?: (s: number) => Convex;
  /** Least gap that is wanted, mm; or how many stones. */
  readonly gap: number;
  readonly count: number | undefined;
  /** Most stones. */
  readonly most: number;
}

/** One number of stones that a row could have. */
export interface RowFit {
  readonly count: number;
  /** Clear gap between neighbours in space, mm; undefined of a single stone. */
  readonly gap: number | undefined;
  /** Lengths along the line. */
  readonly places: readonly number[];
}

/** A row as it was solved. */
export interface SolvedRow {
  /** Undefined where not even the fewest stones fit, or not so many as were asked for. */
  readonly fit: RowFit | undefined;
  readonly fewer: RowFit | undefined;
  readonly more: RowFit | undefined;
  /** The most that fit without touching, where that was looked for. */
  readonly room: number | undefined;
}

/** Gaps of a row differ by no more than this, mm. */
const EVEN = 1e-8;

/** Rounds in which gaps become even: four to eight on rings; more over sharp corners. */
const MOST_ROUNDS = 200;

/** A gap that rounding alone makes smaller than the wanted one is the wanted one, mm. */
const ROUNDING = 1e-7;

/** Solves a row: as many stones as leave the wanted gap, or the number that was asked for, with its neighbours. */
export function solveRow(row: RowQuestion): SolvedRow {
  const step = row.pairs ? 2 : 1;
  const best = row.count ?? nearestCount(row, step);
  const fit = best > row.most ? undefined : exactly(row, fitRow(row, best));
  const room = fit === undefined && row.count !== undefined ? nearestCount({ ...row, gap: 0 }, step) : undefined;
  const other = (count: number) => (count < 1 || count > row.most ? undefined : fitRow(row, count));
  return { fit, fewer: other(best - step), more: other(best + step), room };
}

/** The largest number whose gap is no smaller than the wanted one; 1 at least. */
function nearestCount(row: RowQuestion, step: number): number {
  const does = (count: number) => {
    const gap = count > 1 ? fitRow(row, count) : undefined;
    return count <= 1 || (gap?.gap !== undefined && gap.gap >= row.gap - ROUNDING);
  };
  const guess = guessCount(row);
  let count = Math.max(step, step * Math.floor(guess / step));
  if (count > row.most) return count;
  while (count > step && !does(count)) count -= step;
  while (count + step <= row.most && does(count + step)) count += step;
  return count;
}

/** About how many stones there are, from how much of the line single pairs take. */
function guessCount({ length, closed, gap, girdleAt }: RowQuestion): number {
  const taken = LOOKS.map((share) => {
    const s = share * length;
    const step = touchingStep(girdleAt, s, length);
    return step + gap;
  });
  const mean = taken.reduce((sum, one) => sum + one, 0) / taken.length;
  return Math.floor(length / mean + ROUNDING) + (closed ? 0 : 1);
}

/** Shares of a row at which it is looked how much of it a stone takes. */
const LOOKS = [0, 0.2, 0.4, 0.6, 0.8];

/** Where the next stone touches the one at `s`, mm on; about. */
function touchingStep(girdleAt: RowQuestion["girdleAt"], s: number, length: number): number {
  const one = girdleAt(s);
  const gapAt = (step: number) => convexDistance(one, girdleAt(s + step)).distance;
  let high = length / 2;
  for (let i = 0; i < MOST_HALVINGS && gapAt(high / 2) > 0; i++) high /= 2;
  return Math.max(LEAST_STEP, high - gapAt(high));
}

const MOST_HALVINGS = 20;
const LEAST_STEP = 0.05;

/** The row with so many stones; undefined where they touch. */
function fitRow(row: RowQuestion, count: number): RowFit | undefined {
  const { length, closed } = row;
  if (count === 1) return { count, gap: undefined, places: [closed ? 0 : length / 2] };
  const spans = closed ? count : count - 1;
  const even = Array.from({ length: spans }, () => length / spans);
  if (row.even) {
    const gap = gapsOf(row, [0, length / spans])[0];
    return gap === 0 ? undefined : { count, gap, places: placesOf(even, count) };
  }
  return settle(row, even, count);
}

/** A row that was solved nearly, solved exactly from there on. */
function exactly({ exactAt, ...row }: RowQuestion, fit: RowFit | undefined): RowFit | undefined {
  if (exactAt === undefined || row.even || fit?.gap === undefined) return fit;
  const ends = row.closed ? [...fit.places, row.length] : fit.places;
  return settle(
    { ...row, girdleAt: exactAt },
    ends.slice(1).map((s, i) => s - ends[i]),
    fit.count,
  );
}

/** Moves stones until all gaps are the same. */
function settle(row: RowQuestion, even: readonly number[], count: number): RowFit | undefined {
  let steps = even;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const gaps = gapsOf(row, placesOf(steps, steps.length + 1));
    const [least, most] = [Math.min(...gaps), Math.max(...gaps)];
    if (most - least <= EVEN) return least === 0 ? undefined : { count, gap: least, places: placesOf(steps, count) };
    const before = steps;
    const gap = gaps.reduce((sum, one) => sum + one, 0) / gaps.length;
    steps = before.map((step, i) => step - gaps[i] + gap);
  }
  return undefined;
}

/** The gap between each two neighbours, 0 where they touch. */
function gapsOf({ girdleAt }: RowQuestion, places: readonly number[]): number[] {
  const girdles = places.map(girdleAt);
  return girdles.slice(1).map((girdle, i) => convexDistance(girdles[i], girdle).distance);
}

function placesOf(steps: readonly number[], count: number): number[] {
  let s = 0;
  return Array.from({ length: count }, (_, i) => {
    const at = s;
    s += steps[i] ?? 0;
    return at;
  });
}
