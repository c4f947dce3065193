/**
 * Cleans a region for solids: parts that touch in a point or nearly touch are parted or joined, and it is said, with what
 * is lost.
 *
 * It is done cluster by cluster: where nothing nearly touches, nothing moves, and the work grows as the number of parts.
 */
import { AnnuletError, type Warn } from "../base/errors.js";
import { finish, type Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import { clustersOf } from "./clusters.js";
import type { GridPath } from "./grid.js";
import { findHairline, type Hairline } from "./hairline.js";
import { areaOf, describeLoss, type Loss, lossOf, roundLoss } from "./loss.js";
import { takePeriod } from "./period.js";
import { cleanRegion, type GridRegion, offset, simplify, subtract } from "./polygons.js";
import { clearRing, copiesAlong, inFirstPeriod, isLocal, type Strip, steps } from "./strip.js";

/**
 * Gaps and necks narrower than twice this are closed and opened, mm: well above the 2 µm of short edges that are collapsed
 * after uniting, so that what is apart stays apart; far below anything that can be cast.
 */
const CLEAN_REACH = 4e-3;

/** Vertices nearer to the line through their neighbours than this carry no shape, mm. */
const SIMPLIFY_REACH = 1e-3;

/** Outlines farther from each other than this many reaches do not meet: each grows by up to four, where gaps are measured. */
const APART_REACHES = 8;

/** Rings that are looked at together. */
interface Group {
  readonly rings: GridRegion;
  /** The part of them that matters. */
  readonly sample: GridRegion;
  /** Whether they are one period's, to be copied into the others. */
  readonly copied: boolean;
}

/**
 * Cleans hairlines where outlines meet in a vertex, or where growing or shrinking by a hair joins, parts or loses
 * something, and warns (`hairline`), with the share of the area that is lost. One period shows whether it is so.
 *
 * @throws AnnuletError `region-vanishes` where nothing is left
 */
export function tidy(strip: Strip, region: GridRegion, where: string, warn: Warn): GridRegion {
  return finish(tidying(strip, region, where, warn));
}

/** The same in pieces, cluster by cluster. */
export function* tidying(strip: Strip, region: GridRegion, where: string, warn: Warn): Pausing<GridRegion> {
  if (region.length === 0) return region;
  const plain = simplify(region, steps(strip, SIMPLIFY_REACH)).filter((ring) => ring.length > 2);
  const specks = plain.length === region.length ? [] : region.filter((ring) => isSpeck(strip, ring));
  yield undefined;
  const { groups, rest } = groupsOf(strip, clustersOf(plain, steps(strip, APART_REACHES * CLEAN_REACH)));
  let worst: Hairline | undefined;
  const lost: GridPath[] = [...specks];
  const cleaned: GridPath[] = [];
  for (const { rings, sample, copied } of groups) {
    yield undefined;
    const found = yield* findHairline(strip, sample, CLEAN_REACH, worst);
    worst = found ?? worst;
    const clean = found === undefined ? rings : cleanRegion(rings, steps(strip, CLEAN_REACH));
    if (found !== undefined) lost.push(...withoutRounding(subtract(sample, clean)));
    for (const ring of clean) cleaned.push(...(copied ? copiesAlong(strip, ring) : [ring]));
  }
  if (cleaned.length === 0 && rest.length === 0) throw vanishes(where);
  const loss = lossOf(
    strip,
    lost,
    groups.reduce((sum, { sample }) => sum + areaOf(sample), areaOf(specks)),
  );
  if (worst === undefined && loss === undefined) return plain;
  warn({
    code: "hairline",
    message: describe(worst, loss),
    path: where,
    value: { ...(worst && placeOf(worst)), ...(loss && { lost: roundLoss(loss) }) },
    hint: "let the parts overlap clearly or keep a clear gap between them",
  });
  return worst === undefined ? plain : [...cleaned, ...rest];
}

/**
 * Of a strip that comes again the clusters of one period, each a group; what is too long for that is one group. Of another
 * those in the span covered. The rest is looked at no further.
 */
function groupsOf(strip: Strip, clusters: readonly GridPath[][]): { groups: Group[]; rest: GridPath[] } {
  if (!strip.periodic) {
    const clear = clusters.filter((rings) => rings.some((ring) => clearRing(strip, ring)));
    const groups = clear.map((rings) => ({ rings, sample: withinStretch(strip, rings), copied: false }));
    const met = new Set(clear);
    return { groups, rest: clusters.filter((rings) => !met.has(rings)).flat() };
  }
  const local = clusters.filter((rings) => isLocal(strip, rings.flat()));
  const short = new Set(local);
  const long = clusters.filter((rings) => !short.has(rings)).flat();
  const own = local.filter((rings) => inFirstPeriod(strip, rings.flat()));
  const groups: Group[] = own.map((rings) => ({ rings, sample: rings, copied: true }));
  if (long.length > 0) groups.push({ rings: long, sample: takePeriod(strip, long), copied: false });
  return { groups, rest: [] };
}

/** The rings as far as they lie in the span covered. */
function withinStretch(strip: Strip, rings: readonly GridPath[]): GridRegion {
  const [low, high] = strip.stretch;
  const inside = rings.every((ring) => ring.every(({ x }) => x >= low && x <= high));
  return inside ? rings : takePeriod(strip, rings);
}

/** Slivers narrower than twice this are rounding between two outlines, grid steps: 40 nm (chosen). */
const ROUNDING = 20;

function withoutRounding(rings: GridRegion): GridRegion {
  return offset(offset(rings, -ROUNDING, "miter", ROUNDING), ROUNDING, "miter", ROUNDING);
}

/** Whether a ring is so small that it carries no shape, where one of its kind is looked for. */
function isSpeck(strip: Strip, ring: GridPath): boolean {
  const here = strip.periodic ? inFirstPeriod(strip, ring) : clearRing(strip, ring);
  return here && simplify([ring], steps(strip, SIMPLIFY_REACH)).every(({ length }) => length <= 2);
}

function vanishes(path: string): AnnuletError {
  return new AnnuletError({
    code: "region-vanishes",
    message: `nothing of the region is wider than ${showLength(2 * CLEAN_REACH)}, so nothing of it can be made`,
    path,
    allowed: `parts wider than ${showLength(2 * CLEAN_REACH)}`,
    hint: "draw it larger, or look whether its unit is the one meant",
  });
}

/** What nearly touches, where and how, and what is lost. */
function describe(hairline: Hairline | undefined, loss: Loss | undefined): string {
  const done = `gaps and necks narrower than ${showLength(2 * CLEAN_REACH)} were closed or opened`;
  const gone = loss === undefined ? "" : `, and with them went ${describeLoss(loss)}`;
  return `${hairline === undefined ? "parts of the region are too small to be made" : describeHairline(hairline)}: ${done}${gone}`;
}

function describeHairline({ kind, width, ...place }: Hairline): string {
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
