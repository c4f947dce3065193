/**
 * Where a flat region is narrower than some width: what an opening by half that width takes away.
 *
 * An opening also rounds corners off. What it takes at a corner joins the rest on one side and is no longer than a few
 * widths; what it takes of a line is longer than that, joins the rest on two sides (a neck) or not at all (a piece that is
 * nowhere as wide).
 */
import type { Point2 } from "../../math/point.js";
import { ringBox } from "../box.js";
import type { GridPath } from "../grid.js";
import { type GridRegion, grow, intersect, offset, ringArea, shrink, subtract } from "../polygons.js";

/** A place that is too narrow; mm. */
export interface NarrowPlace {
  /** The middle of what is. */
  readonly at: Point2;
  /** How wide that is: the width of the rectangle of its area and outline. */
  readonly width: number;
  /** Whether it joins the rest on one side only, as a tip does. */
  readonly tip: boolean;
}

/** What is taken away at a tip is no longer than this many widths unless its sides are within 29° of each other. */
const TIP_WIDTHS = 2;

/** Arcs of the opening lie this near to their chords, mm. */
const ARC_TOLERANCE = 1e-3;

/** Slivers thinner than this are rounding of arcs, mm. */
const SLIVER = 3e-3;

/** What is taken away counts from this share of the width squared. */
const LEAST_AREA = 0.05;

export interface NarrowOptions {
  /** Grid steps in a millimetre. */
  readonly scale: number;
  /** Pieces are looked at whose middle lies here, u in mm; default all. */
  readonly within?: readonly [low: number, high: number];
  /** Whether what runs out to a point counts. Default yes. */
  readonly tips?: boolean;
}

/** The places where the region is narrower than `width` mm, the narrowest first. */
export function narrowerThan(
  region: GridRegion,
  width: number,
  { scale, within, tips = true }: NarrowOptions,
): NarrowPlace[] {
  const step = width * scale;
  const opened = offset(shrink(region, step / 2, ARC_TOLERANCE * scale), step / 2, "round", ARC_TOLERANCE * scale);
  const lost = subtract(region, grow(opened, SLIVER * scale));
  return lost
    .filter((ring) => ringArea(ring) >= LEAST_AREA * step * step)
    .flatMap((ring): NarrowPlace[] => {
      const { left, right, low, high } = ringBox(ring);
      const at: Point2 = [(left + right) / 2 / scale, (low + high) / 2 / scale];
      if (within !== undefined && (at[0] < within[0] || at[0] >= within[1])) return [];
      const tip = joints(ring, opened, scale) === 1;
      if (tip && (!tips || Math.hypot(right - left, high - low) <= TIP_WIDTHS * step)) return [];
      return [{ at, width: Math.min(width, stripWidth(ring) / scale), tip }];
    })
    .sort((a, b) => a.width - b.width);
}

/** On how many sides a piece joins what is left. */
function joints(piece: GridPath, rest: GridRegion, scale: number): number {
  const reached = intersect(rest, grow([piece], 2 * SLIVER * scale));
  return reached.filter((ring) => ringArea(ring) > 0).length;
}

/** Width of the strip that has a ring's area A and outline P: a l = A, 2 (a + l) = P. */
function stripWidth(ring: GridPath): number {
  const outline = ring.reduce((sum, { x, y }, i) => {
    const { x: nx, y: ny } = ring[(i + 1) % ring.length];
    return sum + Math.hypot(nx - x, ny - y);
  }, 0);
  const half = outline / 2;
  return (half - Math.sqrt(Math.max(half * half - 4 * ringArea(ring), 0))) / 2;
}

/** The narrowest neck is found to this, mm. */
const PRECISION = 2e-3;

/**
 * The narrowest width below `limit` mm with its places; undefined where the region is nowhere narrower. Tips that run out
 * to nothing count by their mean width below the limit.
 */
export function narrowest(
  region: GridRegion,
  limit: number,
  options: NarrowOptions,
): { readonly width: number; readonly places: readonly NarrowPlace[] } | undefined {
  if (region.length === 0) return undefined;
  const all = narrowerThan(region, limit, options);
  if (all.length === 0) return undefined;
  const [tip] = all.filter((place) => place.tip);
  let necks = all.filter((place) => !place.tip);
  if (necks.length === 0) return { width: tip.width, places: all };
  let [good, bad] = [0, Math.min(limit, tip?.width ?? limit)];
  if (bad < limit) necks = narrowerThan(region, bad, options).filter((place) => !place.tip);
  if (necks.length === 0) return { width: tip.width, places: all };
  while (bad - good > PRECISION) {
    const middle = (good + bad) / 2;
    const found = narrowerThan(region, middle, options).filter((place) => !place.tip);
    if (found.length > 0) [bad, necks] = [middle, found];
    else good = middle;
  }
  return { width: (good + bad) / 2, places: [...necks, ...all.filter((place) => !isNear(place, necks, limit))] };
}

/** Whether a place is one of some others. */
function isNear({ at: [u, v] }: NarrowPlace, others: readonly NarrowPlace[], reach: number): boolean {
  return others.some(({ at }) => Math.hypot(at[0] - u, at[1] - v) < reach);
}
