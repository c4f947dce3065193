/**
 * Where a flat region is narrower than some width: what an opening by half that width takes away, and the short necks that
 * part when the region is shrunk by half of it.
 *
 * An opening also rounds corners off. What it takes at a corner joins the rest on one side and is no longer than a few
 * widths; what it takes of a line is longer than that, or joins the rest on two sides, or not at all.
 *
 * A place that runs out to a point counts by its mean width over a set length at its end, since its least is always 0.
 */
import type { Point2 } from "../../base/math/point.js";
import { type GridBox, ringBox } from "../../flat/box.js";
import type { GridPath, GridPoint } from "../../flat/grid.js";
import { type GridRegion, grow, intersect, offset, ringArea, shrink, subtract } from "../../flat/polygons.js";
import { partedNecks } from "./parted-necks.js";
import { farthestFrom, tipWidth } from "./tip-width.js";

/** A place that is too narrow; mm. */
export interface NarrowPlace {
  /** The middle of what is. */
  readonly at: Point2;
  /** How wide that is: the width of the strip of its area and outline; of a point the mean over a set length at its end. */
  readonly width: number;
  /** Whether it runs out to a point. */
  readonly tip: boolean;
}

/** What is taken away at a corner is no longer than this many widths unless its sides are within 29° of each other. */
const CORNER_WIDTHS = 2;

/** A piece that joins the rest on one side is a line's end from this share of the width on; what is less tapers. */
const LINE_SHARE = 0.75;

/** Arcs of the opening lie this near to their chords, mm. */
const ARC_TOLERANCE = 1e-3;

/** Slivers thinner than this are rounding of arcs, mm. */
const SLIVER = 3e-3;

/** What is taken away counts from this share of the width squared. */
const LEAST_AREA = 0.005;

export interface NarrowOptions {
  /** Grid steps in a millimetre. */
  readonly scale: number;
  /** Places are looked at that lie here, u in mm; default all. */
  readonly within?: readonly [low: number, high: number];
  /** Whether what runs out to a point counts. Default yes. */
  readonly tips?: boolean;
}

/** The places where the region is narrower than `width` mm, the narrowest first. */
export function narrowerThan(region: GridRegion, width: number, options: NarrowOptions): NarrowPlace[] {
  const { scale, tips, within = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] } = options;
  const step = width * scale;
  const shrunk = shrink(region, step / 2, ARC_TOLERANCE * scale);
  const opened = offset(shrunk, step / 2, "round", ARC_TOLERANCE * scale);
  const rest = opened.map((ring) => ({ ring, box: ringBox(ring) }));
  const lost = subtract(region, grow(opened, SLIVER * scale))
    .filter((ring) => ringArea(ring) >= LEAST_AREA * step * step)
    .flatMap((ring): NarrowPlace[] => {
      const { left, right, low, high } = ringBox(ring);
      const at: Point2 = [(left + right) / 2 / scale, (low + high) / 2 / scale];
      if (at[0] < within[0] || at[0] >= within[1]) return [];
      const wide = stripWidth(ring) / scale;
      const joined = joints(ring, rest, scale);
      const atOneSide = joined.length === 1;
      if (atOneSide && Math.hypot(right - left, high - low) <= CORNER_WIDTHS * step) return [];
      const tip = atOneSide && wide < LINE_SHARE * width;
      if (!tip) return [{ at, width: Math.min(width, wide), tip }];
      const end = farthestFrom(ring, middleOf(joined[0]));
      return [{ at, width: tips === false ? wide : tipWidth(region, end, scale), tip }];
    });
  const parted = partedNecks(region, shrunk, step)
    .map(({ x, y }): NarrowPlace => ({ at: [x / scale, y / scale], width, tip: false }))
    .filter(({ at }) => at[0] >= within[0] && at[0] < within[1] && !isNear(at, lost, width));
  return [...lost, ...parted].sort((a, b) => a.width - b.width);
}

function middleOf(ring: GridPath): GridPoint {
  const { left, right, low, high } = ringBox(ring);
  return { x: (left + right) / 2, y: (low + high) / 2 };
}

/** Where a piece joins what is left: a ring for each side. */
function joints(piece: GridPath, rest: readonly { ring: GridPath; box: GridBox }[], scale: number): GridRegion {
  const reach = 2 * SLIVER * scale;
  const own = ringBox(piece);
  // Holes of rings that are near lie in those rings, so they may be left out with them where they are far.
  const near = rest.filter(
    ({ box }) =>
      box.left <= own.right + FAR * reach &&
      box.right >= own.left - FAR * reach &&
      box.low <= own.high + FAR * reach &&
      box.high >= own.low - FAR * reach,
  );
  const reached = intersect(
    near.map(({ ring }) => ring),
    grow([piece], reach),
  );
  return reached.filter((ring) => ringArea(ring) > 0);
}

/** A piece that is grown reaches no farther than this many times what it is grown by: sharp corners are cut off there. */
const FAR = 10;

/** Width of the strip that has a ring's area A and outline P: a l = A, 2 (a + l) = P. */
function stripWidth(ring: GridPath): number {
  const outline = ring.reduce((sum, { x, y }, i) => {
    const { x: nx, y: ny } = ring[(i + 1) % ring.length];
    return sum + Math.hypot(nx - x, ny - y);
  }, 0);
  const half = outline / 2;
  return (half - Math.sqrt(Math.max(half * half - 4 * ringArea(ring), 0))) / 2;
}

function isNear([u, v]: Point2, others: readonly NarrowPlace[], reach: number): boolean {
  return others.some(({ at }) => Math.hypot(at[0] - u, at[1] - v) < reach);
}

/** The narrowest width is found to this, mm. */
const PRECISION = 2e-3;

/** A line that was met as wider than it is, is met again when looked for at so much more than its mean width. */
const AGAIN = 1.15;

/** The narrowest width, and every place below the limit, the narrowest first. */
export interface Narrowest {
  readonly width: number;
  /** Whether that is the mean width of what runs out to a point. */
  readonly tip: boolean;
  readonly places: readonly NarrowPlace[];
}

/** The narrowest width below `limit` mm; undefined where the region is nowhere narrower. */
export function narrowest(region: GridRegion, limit: number, options: NarrowOptions): Narrowest | undefined {
  if (region.length === 0) return undefined;
  const all = narrowerThan(region, limit, options);
  const linesAt = (width: number) => narrowerThan(region, width, { ...options, tips: false }).filter(({ tip }) => !tip);
  let most = 0;
  for (const { width, tip } of all) {
    // Places as wide as those that were looked at are alike.
    if (width <= most || width >= limit) continue;
    most = Math.min(limit, AGAIN * width);
    const lines = linesAt(most);
    if (lines.length > 0) return bisect(most, lines, { linesAt, all, limit });
    if (tip && options.tips !== false) return { width, tip: true, places: all };
  }
  const lines = all.filter(({ tip }) => !tip);
  return lines.length === 0 ? undefined : bisect(limit, lines, { linesAt, all, limit });
}

interface Search {
  readonly linesAt: (width: number) => NarrowPlace[];
  /** Every place below the limit, mm. */
  readonly all: readonly NarrowPlace[];
  readonly limit: number;
}

/** The width from which on there are no lines, from one at which there are some. */
function bisect(from: number, lines: readonly NarrowPlace[], { linesAt, all, limit }: Search): Narrowest {
  let [good, bad, found] = [0, from, lines];
  while (bad - good > PRECISION) {
    const middle = (good + bad) / 2;
    const narrower = linesAt(middle);
    if (narrower.length > 0) [bad, found] = [middle, narrower];
    else good = middle;
  }
  const others = all.filter(({ at }) => !isNear(at, found, limit));
  return { width: (good + bad) / 2, tip: false, places: [...found, ...others] };
}
