/**
 * Finds where a region nearly touches itself: a vertex that outlines share, a neck or part that a hair's shrinking loses,
 * a gap or hole that a hair's growing closes.
 */
import type { Pausing } from "../base/pausing.js";
import { boxRing, ringBox } from "./box.js";
import type { GridPoint } from "./grid.js";
import { keepsParts } from "./keeps-parts.js";
import { narrowestPlace } from "./narrowest.js";
import { type GridRegion, type Join, offset, subtract } from "./polygons.js";
import { type Strip, steps } from "./strip.js";

/** The narrowest such place, and its width. */
export interface Hairline {
  readonly kind: "touch" | "neck" | "gap";
  /** Tile widths: x from the tile's left edge, y from the strip's middle line. */
  readonly x: number;
  readonly y: number;
  /** mm; 0 where outlines touch in a point. */
  readonly width: number;
}

/** mm to which widths are sought: half the last digit shown. */
const SOUGHT = 5e-5;

/** A touch is told before a neck, and a neck before a gap. */
const RANKS = { touch: 0, neck: 1, gap: 2 } as const;

/**
 * The worst of a region's hairlines: the first found of a touch, the narrowest neck, the narrowest gap. Undefined where it
 * has none.
 *
 * @param sample the region, over one period
 * @param reach necks and gaps narrower than twice this are sought, mm
 * @param known one of another region: it is the answer where this region's own is no worse, and that costs less to find.
 *   Default none
 */
export function* findHairline(
  strip: Strip,
  sample: GridRegion,
  reach: number,
  known?: Hairline,
): Pausing<Hairline | undefined> {
  const touch = sharedVertex(sample);
  if (touch !== undefined) {
    if (known?.kind === "touch") return known;
    const { tile } = strip.grid;
    const x = touch.x / tile;
    return { kind: "touch", x: x - Math.floor(x), y: touch.y / tile, width: 0 };
  }
  const grown = (mm: number, join: Join) => offset(sample, steps(strip, mm), join, steps(strip, reach) * ROUNDNESS);
  const ways = [
    { kind: "neck", keeps: (mm: number, join: Join) => keepsParts(sample, grown(-mm, join)), within: () => sample },
    {
      kind: "gap",
      keeps: (mm: number, join: Join) => keepsParts(grown(mm, join), sample),
      within: () => around(strip, sample),
    },
  ] as const;
  // Sharp corners meet sooner than round ones: these find, those measure.
  for (const { kind, keeps, within } of ways) {
    yield undefined;
    if (keeps(reach, "miter")) continue;
    if (known !== undefined && RANKS[known.kind] < RANKS[kind]) return known;
    if (known?.kind === kind && keeps(known.width / 2, "round")) return known;
    let [good, bad] = [0, FARTHER * reach];
    if (keeps(bad, "round")) good = bad;
    while (bad - good > SOUGHT) {
      yield undefined;
      const middle = (good + bad) / 2;
      if (keeps(middle, "round")) good = middle;
      else bad = middle;
    }
    yield undefined;
    return { kind, ...narrowestPlace(strip, within(), good), width: 2 * good };
  }
  return undefined;
}

/** A corner's miter is at most so many distances long. */
const FARTHER = 4;

/** Distance of a round corner from its chords, in reaches. */
const ROUNDNESS = 0.01;

/** A vertex at which outlines meet, their own or each other's. */
function sharedVertex(region: GridRegion): GridPoint | undefined {
  const met = new Set<string>();
  for (const ring of region) {
    for (const point of ring) {
      const key = `${point.x} ${point.y}`;
      if (met.has(key)) return point;
      met.add(key);
    }
  }
  return undefined;
}

/** Room about the region, mm, far wider than any gap that is sought. */
const ROOM = 1;

/** What the region leaves of a box about it: its gaps are necks there. */
function around(strip: Strip, region: GridRegion): GridRegion {
  const { left, right, low, high } = ringBox(region.flat());
  const room = Math.round(steps(strip, ROOM));
  const about = { left: left - room, right: right + room, low: low - room, high: high + room };
  return subtract([boxRing(about)], region);
}
