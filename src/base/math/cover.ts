/**
 * Whether a side lies along other sides over its whole length, not only at its corners: straight-sided shapes may have
 * every corner of their mirror image on their outline without being symmetric.
 */
import type { Point2 } from "./point.js";

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

/** Most columns into which covering sides are sorted, no more than there are sides, so that few are looked at. Chosen. */
const MOST_COLUMNS = 256;

/** Shares of a side this close are one, so that rounding leaves no gap. Chosen: far below any reach. */
const ROUNDING = 1e-9;

/** Sides as what others are held against: the function tells whether a side lies along them over its whole length. */
export function coverOf(sides: readonly Side[], options: CoverOptions): (side: Side) => boolean {
  const { reach, period, directed = false } = options;
  let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [[ax], [bx]] of sides) {
    left = Math.min(left, ax, bx);
    right = Math.max(right, ax, bx);
  }
  if (left > right) return () => false;
  const count = Math.min(MOST_COLUMNS, sides.length);
  const width = (period ?? Math.max(right - left, reach)) / count;
  const column = (x: number) => Math.floor((x - left) / width);
  const columns: Side[][] = Array.from({ length: count }, () => []);
  const inColumn = (c: number, shift: number) => (period === undefined ? clamp(c, count) : c - shift * count);
  for (const side of sides) {
    const [[ax, ay], [bx, by]] = side;
    const last = column(Math.max(ax, bx) + reach);
    for (let c = column(Math.min(ax, bx) - reach); c <= last; c++) {
      const shift = period === undefined ? 0 : Math.floor(c / count);
      const home = shift * (period ?? 0);
      columns[inColumn(c, shift)].push(
        shift === 0
          ? side
          : [
              [ax - home, ay],
              [bx - home, by],
            ],
      );
    }
  }
  return (side) => {
    const [[ax, ay], [bx, by]] = side;
    const spans: Span[] = [];
    const last = column(Math.max(ax, bx));
    for (let c = column(Math.min(ax, bx)); c <= last; c++) {
      const shift = period === undefined ? 0 : Math.floor(c / count);
      const home = shift * (period ?? 0);
      const moved: Side = [
        [ax - home, ay],
        [bx - home, by],
      ];
      for (const other of columns[inColumn(c, shift)]) {
        if (isApart(moved, other, reach)) continue;
        if (directed && runsAgainst(moved, other, 2 * reach)) continue;
        const span = spanNear(moved, other, reach);
        if (span !== undefined) spans.push(span);
      }
    }
    return fill(spans);
  };
}

function clamp(column: number, count: number): number {
  return Math.min(count - 1, Math.max(0, column));
}

/** Shares of a side, 0 at its start, 1 at its end. */
type Span = readonly [low: number, high: number];

/** Whether the spans leave nothing out between 0 and 1. */
function fill(spans: Span[]): boolean {
  spans.sort(([a], [b]) => a - b);
  let reached = 0;
  for (const [low, high] of spans) {
    if (low > reached + ROUNDING) return false;
    reached = Math.max(reached, high);
    if (reached >= 1 - ROUNDING) return true;
  }
  return false;
}

/** Whether two sides are farther apart than `reach` across the columns, or along them: most are. */
function isApart([a, b]: Side, [c, d]: Side, reach: number): boolean {
  return (
    Math.min(c[1], d[1]) > Math.max(a[1], b[1]) + reach ||
    Math.max(c[1], d[1]) < Math.min(a[1], b[1]) - reach ||
    Math.min(c[0], d[0]) > Math.max(a[0], b[0]) + reach ||
    Math.max(c[0], d[0]) < Math.min(a[0], b[0]) - reach
  );
}

function runsAgainst([[ax, ay], [bx, by]]: Side, [[cx, cy], [dx, dy]]: Side, least: number): boolean {
  const [abx, aby, cdx, cdy] = [bx - ax, by - ay, dx - cx, dy - cy];
  return abx * cdx + aby * cdy < 0 && Math.hypot(abx, aby) > least && Math.hypot(cdx, cdy) > least;
}

/**
 * The part of a side that lies within `reach` of another side: what is near a side is convex, so it is one span.
 */
function spanNear([[ax, ay], [bx, by]]: Side, [[cx, cy], [dx, dy]]: Side, reach: number): Span | undefined {
  const [px, py] = [ax - cx, ay - cy];
  const [ex, ey] = [bx - ax, by - ay];
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const add = (span: Span | undefined) => {
    if (span === undefined) return;
    low = Math.min(low, span[0]);
    high = Math.max(high, span[1]);
  };
  add(spanInDisc(px, py, ex, ey, reach));
  add(spanInDisc(ax - dx, ay - dy, ex, ey, reach));
  const length = Math.hypot(dx - cx, dy - cy);
  if (length > 0) {
    const [tx, ty] = [(dx - cx) / length, (dy - cy) / length];
    const along = spanBetween(px * tx + py * ty, ex * tx + ey * ty, 0, length);
    const aside = spanBetween(tx * py - ty * px, tx * ey - ty * ex, -reach, reach);
    if (along !== undefined && aside !== undefined) {
      const span: Span = [Math.max(along[0], aside[0]), Math.min(along[1], aside[1])];
      if (span[0] <= span[1]) add(span);
    }
  }
  return low <= high ? [low, high] : undefined;
}

/** Shares from 0 to 1 at which p + t·e lies within a disc about the origin. */
function spanInDisc(px: number, py: number, ex: number, ey: number, radius: number): Span | undefined {
  const [a, b, c] = [ex * ex + ey * ey, px * ex + py * ey, px * px + py * py - radius * radius];
  if (a === 0) return c <= 0 ? [0, 1] : undefined;
  const root = b * b - a * c;
  if (root < 0) return undefined;
  const [low, high] = [Math.max(0, (-b - Math.sqrt(root)) / a), Math.min(1, (-b + Math.sqrt(root)) / a)];
  return low <= high ? [low, high] : undefined;
}

/** Shares from 0 to 1 at which start + t·step lies between two bounds. */
function spanBetween(start: number, step: number, least: number, most: number): Span | undefined {
  if (step === 0) return start >= least && start <= most ? [0, 1] : undefined;
  const [first, second] = [(least - start) / step, (most - start) / step];
  const [low, high] = [Math.max(0, Math.min(first, second)), Math.min(1, Math.max(first, second))];
  return low <= high ? [low, high] : undefined;
}
