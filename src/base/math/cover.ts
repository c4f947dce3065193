/**
 * Whether a side lies along other sides over its whole length, not only at its corners: straight-sided shapes may have
 * every corner of their mirror image on their outline without being symmetric.
 */
import type { Point2 } from "./point.js";
import { SideSpans } from "./side-spans.js";

/** A straight side from one point to another. */
export type Side = readonly [from: Point2, to: Point2];

/** The sides between points in order; a point alone is a side of no length. */
export function sidesOf(points: readonly Point2[], closed: boolean): Side[] {
  const count = closed || points.length === 1 ? points.length : points.length - 1;
  return Array.from({ length: count }, (_, i): Side => [points[i], points[(i + 1) % points.length]]);
}

export interface CoverOptions {
  /** How far a side may lie from the sides that cover it, above 0, in the points' unit. */
  readonly reach: number;
  /** x after which the covering sides come again, beginning anywhere. Default: they stand once. */
  readonly period?: number;
  /**
   * Whether a side is covered only by sides that run its way, so that a shape is told from what lies round it. Sides
   * shorter than twice the reach have no way. Default no.
   */
  readonly directed?: boolean;
}

/** Most columns into which covering sides are sorted, no more than there are sides nor narrower than twice the reach. Chosen. */
const MOST_COLUMNS = 4096;

/** Numbers that a covering side takes: x and y of both its ends. */
const SIDE = 4;

/** Sides as what others are held against: the function tells whether a side lies along them over its whole length. */
export function coverOf(sides: readonly Side[], options: CoverOptions): (side: Side) => boolean {
  if (sides.length === 0) return () => false;
  const { reach, directed = false } = options;
  const columns = new Columns(sides, options);
  const { places } = columns;
  const spans = new SideSpans(reach);
  return (side) => {
    const [[ax, ay], [bx, by]] = side;
    spans.begin();
    const last = columns.numberOf(Math.max(ax, bx));
    for (let c = columns.numberOf(Math.min(ax, bx)); c <= last; c++) {
      const home = columns.homeOf(c);
      const from = ax - home;
      const to = bx - home;
      const left = Math.min(from, to) - reach;
      const right = Math.max(from, to) + reach;
      const low = Math.min(ay, by) - reach;
      const high = Math.max(ay, by) + reach;
      spans.place(from, ay, to - from, by - ay);
      const end = columns.endOf(c);
      for (let at = columns.startOf(c); at < end; at += SIDE) {
        const cx = places[at];
        const cy = places[at + 1];
        const dx = places[at + 2];
        const dy = places[at + 3];
        // Most are farther away than the reach.
        if ((cy > high && dy > high) || (cy < low && dy < low) || (cx > right && dx > right)) continue;
        if (cx < left && dx < left) continue;
        if (directed && runsAgainst(to - from, by - ay, dx - cx, dy - cy, 2 * reach)) continue;
        if (spans.addNear(places, at)) return true;
      }
    }
    return spans.fill();
  };
}

/** Covering sides in columns, each in all that it reaches into, moved by whole periods to where the columns are. */
class Columns {
  /** The sides of one column after the other. */
  readonly places: Float64Array;
  readonly #left: number;
  readonly #width: number;
  readonly #count: number;
  readonly #period: number | undefined;
  /** Where the sides of each column begin, with one more at the end. */
  readonly #starts: Int32Array;

  constructor(sides: readonly Side[], { reach, period }: CoverOptions) {
    let left = Number.POSITIVE_INFINITY;
    let right = Number.NEGATIVE_INFINITY;
    for (const [[ax], [bx]] of sides) {
      left = Math.min(left, ax, bx);
      right = Math.max(right, ax, bx);
    }
    const length = period ?? Math.max(right - left, reach);
    this.#left = left;
    this.#period = period;
    this.#count = Math.max(1, Math.min(MOST_COLUMNS, sides.length, Math.floor(length / (2 * reach))));
    this.#width = length / this.#count;
    this.#starts = new Int32Array(this.#count + 1);
    const starts = this.#starts;
    const each = (put: (column: number, side: Side, home: number) => void) => {
      for (const side of sides) {
        const [[ax], [bx]] = side;
        const last = this.numberOf(Math.max(ax, bx) + reach);
        for (let c = this.numberOf(Math.min(ax, bx) - reach); c <= last; c++)
          put(this.#columnOf(c), side, this.homeOf(c));
      }
    };
    each((column) => {
      starts[column + 1] += SIDE;
    });
    for (let column = 0; column < this.#count; column++) starts[column + 1] += starts[column];
    const next = starts.slice();
    this.places = new Float64Array(starts[this.#count]);
    each((column, [[ax, ay], [bx, by]], home) => {
      const at = next[column];
      next[column] += SIDE;
      this.places[at] = ax - home;
      this.places[at + 1] = ay;
      this.places[at + 2] = bx - home;
      this.places[at + 3] = by;
    });
  }

  /** The number of the column over x; they are counted on beyond the first and the last. */
  numberOf(x: number): number {
    return Math.floor((x - this.#left) / this.#width);
  }

  /** By how much what stands over a column so numbered is moved to stand over one of the first period. */
  homeOf(number: number): number {
    return this.#period === undefined ? 0 : Math.floor(number / this.#count) * this.#period;
  }

  startOf(number: number): number {
    return this.#starts[this.#columnOf(number)];
  }

  endOf(number: number): number {
    return this.#starts[this.#columnOf(number) + 1];
  }

  #columnOf(number: number): number {
    if (this.#period !== undefined) return number - Math.floor(number / this.#count) * this.#count;
    return Math.min(this.#count - 1, Math.max(0, number));
  }
}

/** Whether two sides, by their ways, run against each other and are both long enough to have one. */
function runsAgainst(ax: number, ay: number, bx: number, by: number, least: number): boolean {
  return ax * bx + ay * by < 0 && ax * ax + ay * ay > least * least && bx * bx + by * by > least * least;
}
