/**
 * Cleans a region for solids: parts that touch in a point or nearly touch are parted or joined, and it is said.
 */
import type { Warn } from "../errors.js";
import { showLength } from "../units.js";
import { keepsParts } from "./parts.js";
import { takePeriod } from "./period.js";
import { cleanRegion, type GridRegion, offset, simplify } from "./polygons.js";
import { type Strip, steps } from "./strip.js";

/**
 * Gaps and necks narrower than twice this are closed and opened, mm: well above the 2 µm of short edges that are collapsed
 * after uniting, so that what is apart stays apart; far below anything that can be cast.
 */
const CLEAN_REACH = 4e-3;

/** Vertices nearer to the line through their neighbours than this carry no shape, mm. */
const SIMPLIFY_REACH = 1e-3;

/**
 * Cleans hairlines where outlines meet in a vertex, or where growing or shrinking by a hair joins, parts or loses
 * something, and warns (`hairline`). One period shows whether it is so.
 */
export function tidy(strip: Strip, region: GridRegion, where: string, warn: Warn): GridRegion {
  if (region.length === 0) return region;
  const reach = steps(strip, CLEAN_REACH);
  const plain = simplify(region, steps(strip, SIMPLIFY_REACH));
  const sample = takePeriod(strip, plain);
  const grown = (distance: number) => offset(sample, distance, "miter", reach);
  const clear = !pinches(sample) && keepsParts(sample, grown(-reach)) && keepsParts(grown(reach), sample);
  if (clear) return plain;
  warn({
    code: "hairline",
    message: `parts of the region touch or nearly touch: gaps and necks narrower than ${showLength(2 * CLEAN_REACH)} were closed or opened`,
    path: where,
    hint: "let the parts overlap clearly or keep a clear gap between them",
  });
  return cleanRegion(plain, reach);
}

/** Whether outlines meet, their own or each other's, in a vertex. */
function pinches(region: GridRegion): boolean {
  const met = new Set<string>();
  for (const ring of region) {
    for (const { x, y } of ring) {
      const key = `${x} ${y}`;
      if (met.has(key)) return true;
      met.add(key);
    }
  }
  return false;
}
