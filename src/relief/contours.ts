/**
 * Contours of a region at the levels of its section.
 *
 * A section whose inside need not hold together follows the region to its middle line: where a part vanishes or falls
 * apart between two levels, levels are put in between until what is lost there is within the tolerance.
 */
import { BREATH, type Pausing } from "../base/pausing.js";
import { ringBox } from "../flat/box.js";
import { keepsParts } from "../flat/keeps-parts.js";
import { type GridRegion, grow, offset, shrink, simplify, subtract } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";
import type { SectionLine } from "./sections/section-form.js";

/** A contour of a region. */
export interface Level {
  readonly rings: GridRegion;
  /** mm inside the outline. */
  readonly inset: number;
  /** mm above the seat. */
  readonly h: number;
}

/** The contour at each point of the line; they may fall apart and be empty. */
export function* plainContours(strip: Strip, region: GridRegion, line: SectionLine): Pausing<Level[]> {
  const levels: Level[] = [];
  for (const [inset, h] of line) {
    yield BREATH;
    const inside = inset > 0;
    const rings = inside ? shrink(region, steps(strip, inset), strip.arcTolerance) : outward(strip, region, inset);
    levels.push({ rings, inset, h });
  }
  return levels;
}

/**
 * Contours to the middle of every part; the last one in each place is within the tolerance of the true top there.
 */
export function* followedContours(strip: Strip, region: GridRegion, line: SectionLine): Pausing<Level[]> {
  const levels: Level[] = [];
  for (const [inset, h] of line) {
    yield undefined;
    const before = levels.at(-1);
    const level = { rings: inset <= 0 ? outward(strip, region, inset) : inward(strip, region, inset), inset, h };
    if (before === undefined || inset <= 0) levels.push(level);
    else levels.push(...(yield* between(strip, region, before, level)));
    if (level.rings.length === 0) break;
  }
  return levels;
}

/** mm from the outline to the middle of the region's widest place, to a tenth of the art's tolerance. */
export function* widestInset(strip: Strip, region: GridRegion): Pausing<number> {
  const { low, high } = ringBox(region.flat());
  let [good, bad] = [0, (high - low) / 2 / strip.grid.scale];
  while (bad - good > REACH_SHARE * strip.artTolerance) {
    yield undefined;
    const middle = (good + bad) / 2;
    if (inward(strip, region, middle).length > 0) good = middle;
    else bad = middle;
  }
  return good + CLEAN_REACH;
}

/** Share of the art's tolerance to which the widest place is found. */
const REACH_SHARE = 0.1;

/**
 * Necks and gaps of a contour narrower than twice this are opened and closed, mm: what is so thin would fall together in
 * a float32 file.
 */
const CLEAN_REACH = 2e-3;

/** Vertices nearer to the line through their neighbours than this carry no shape, mm. */
const SIMPLIFY_REACH = 1e-3;

function outward(strip: Strip, region: GridRegion, inset: number): GridRegion {
  return offset(region, -steps(strip, inset), "miter", strip.arcTolerance);
}

/** The contour, cleaned. Opening and closing keep contours inside each other: both are monotone. */
function inward(strip: Strip, region: GridRegion, inset: number): GridRegion {
  const reach = steps(strip, CLEAN_REACH);
  const move = (rings: GridRegion, distance: number) => offset(rings, distance, "miter", strip.arcTolerance);
  const shrunk = move(region, -steps(strip, inset) - reach);
  if (shrunk.length === 0) return [];
  return simplify(move(move(shrunk, 2 * reach), -reach), steps(strip, SIMPLIFY_REACH));
}

/** Levels after `low` up to `high`, so that nothing between them is lost by more than the tolerance. */
function* between(strip: Strip, region: GridRegion, low: Level, high: Level): Pausing<Level[]> {
  yield undefined;
  const rise = Math.abs(high.h - low.h);
  const run = high.inset - low.inset;
  if (rise <= strip.artTolerance || run <= NEAREST * CLEAN_REACH || isWhole(strip, low, high)) {
    return high.rings.length > 0 ? [high] : [];
  }
  const inset = (low.inset + high.inset) / 2;
  const middle = { rings: inward(strip, region, inset), inset, h: (low.h + high.h) / 2 };
  yield BREATH;
  const first = yield* between(strip, region, low, middle);
  return middle.rings.length === 0 ? first : [...first, ...(yield* between(strip, region, middle, high))];
}

/** Contours are no nearer to each other than this many cleaning reaches, so that cleaning cannot bring them together. */
const NEAREST = 2;

/** Whether the upper contour has every part of the lower one, and comes near everything that is high enough to matter. */
function isWhole(strip: Strip, low: Level, high: Level): boolean {
  if (high.rings.length === 0 || !keepsParts(low.rings, high.rings)) return false;
  const run = high.inset - low.inset;
  const lost = subtract(low.rings, grow(high.rings, steps(strip, run + CLEAN_REACH)));
  const matters = Math.max(CLEAN_REACH, (strip.artTolerance * run) / Math.abs(high.h - low.h));
  return offset(lost, -steps(strip, matters), "miter", strip.arcTolerance).length === 0;
}
