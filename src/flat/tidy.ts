/**
 * Cleans a region for solids: parts that touch in a point or nearly touch are parted or joined, and it is said.
 */
import type { Warn } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { findHairline, type Hairline } from "./hairline.js";
import { takePeriod } from "./period.js";
import { cleanRegion, type GridRegion, simplify } from "./polygons.js";
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
  const plain = simplify(region, steps(strip, SIMPLIFY_REACH));
  const hairline = findHairline(strip, takePeriod(strip, plain), CLEAN_REACH);
  if (hairline === undefined) return plain;
  warn({
    code: "hairline",
    message: `${describe(hairline)}: gaps and necks narrower than ${showLength(2 * CLEAN_REACH)} were closed or opened`,
    path: where,
    value: placeOf(hairline),
    hint: "let the parts overlap clearly or keep a clear gap between them",
  });
  return cleanRegion(plain, steps(strip, CLEAN_REACH));
}

/** What nearly touches, where and how. */
function describe({ kind, width, ...place }: Hairline): string {
  const [x, y] = [place.x, place.y].map((at) => Number(at.toFixed(PLACE_DIGITS)));
  const at = `at x ${x}, y ${y} (tile widths)`;
  if (kind === "touch") return `parts of the region touch in a point ${at}`;
  const what = kind === "neck" ? "the region is" : "parts of the region nearly touch: the gap is";
  return `${what} ${Number(width.toFixed(WIDTH_DIGITS))} mm wide ${at}`;
}

/** Digits of places, tile widths, and of widths, mm. */
const PLACE_DIGITS = 3;
const WIDTH_DIGITS = 4;

function placeOf({ x, y, width }: Hairline): { readonly x: number; readonly y: number; readonly width: number } {
  const round = (value: number, digits: number) => Number(value.toFixed(digits));
  return { x: round(x, PLACE_DIGITS), y: round(y, PLACE_DIGITS), width: round(width, WIDTH_DIGITS) };
}
