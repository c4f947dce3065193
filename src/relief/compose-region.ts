/**
 * What becomes of a completed region: grown or shrunk, kept within other regions, kept clear of others.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { type ComposeSpec, LAP } from "../design/pattern/compose.js";
import { type Chain, joinLines } from "../flat/chains.js";
import type { GridPath } from "../flat/grid.js";
import { largestInset } from "../flat/largest-inset.js";
import { clipLinesTo, type GridRegion, grow, intersect, offset, subtract, unite } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";

/** The completed region of a name. `where` is the place in the document that names it. */
export type OtherRegion = (name: string, where: string) => GridRegion;

/** Whether anything is done to the region. */
export function isComposed({ offset, within, without }: ComposeSpec): boolean {
  return (offset !== undefined && offset !== 0) || within !== undefined || without !== undefined;
}

/** The names that a region is composed with, each with its place in the region. */
export function othersOf({ within = [], without = [] }: ComposeSpec): { readonly name: string; readonly at: string }[] {
  return [
    ...within.map((name, i) => ({ name, at: `.within[${i}]` })),
    ...without.map((other, i) =>
      typeof other === "string"
        ? { name: other, at: `.without[${i}]` }
        : { name: other.region, at: `.without[${i}].region` },
    ),
  ];
}

/**
 * The composed region.
 *
 * @param where the region's place in the document
 * @throws AnnuletError `offset-too-large`, `region-empty`, and what `other` throws
 */
export function composeRegion(
  strip: Strip,
  spec: ComposeSpec,
  region: GridRegion,
  other: OtherRegion,
  where: string,
): GridRegion {
  const moved = moveOutline(strip, spec.offset ?? 0, region, where);
  const { within, without = [] } = spec;
  const kept =
    within === undefined
      ? moved
      : intersect(moved, unite(within.flatMap((name, i) => other(name, `${where}.within[${i}]`))));
  if (kept.length === 0) throw nothingLeft(`${where}.within`, within, "lies within the regions named");
  const met: GridPath[] = [];
  const cleared: GridPath[] = [];
  without.forEach((one, i) => {
    const place = `${where}.without[${i}]`;
    if (typeof one === "string") met.push(...other(one, place));
    else
      cleared.push(...offset(other(one.region, `${place}.region`), steps(strip, one.gap), "round", strip.arcTolerance));
  });
  const parted = met.length === 0 ? kept : subtract(kept, unite(met));
  const lapped = parted === moved ? moved : intersect(grow(parted, steps(strip, LAP)), moved);
  const left = cleared.length === 0 ? lapped : subtract(lapped, unite(cleared));
  if (left.length === 0) throw nothingLeft(`${where}.without`, without, "is left beside the regions named");
  return left;
}

function moveOutline(strip: Strip, distance: number, region: GridRegion, where: string): GridRegion {
  const by = (mm: number) => offset(region, steps(strip, mm), "miter", strip.arcTolerance);
  const moved = by(distance);
  if (moved.length > 0) return moved;
  throw new AnnuletError({
    code: "offset-too-large",
    message: `nothing of the region lies ${showLength(-distance)} inside its outline`,
    path: `${where}.offset`,
    value: distance,
    allowed: `at least -${showLength(largestInset(region, -distance, strip.grid.scale, by))}`,
  });
}

function nothingLeft(path: string, value: unknown, what: string): AnnuletError {
  return new AnnuletError({
    code: "region-empty",
    message: `nothing of the region ${what}`,
    path,
    value,
    hint: "check which regions are named, and where they stand",
  });
}

/** Pieces of cut lines shorter than this are rounding, mm. */
const PIECE = 1e-3;

/** Centre lines as far as they lie in the composed region. A loop that is cut becomes open lines. */
export function cutLines(strip: Strip, lines: readonly Chain[], region: GridRegion): Chain[] {
  const reach = steps(strip, PIECE);
  const long = (path: GridPath) => path.some(({ x, y }) => Math.hypot(x - path[0].x, y - path[0].y) > reach);
  return lines.flatMap((line) => {
    const path = line.closed ? [...line.points, line.points[0]] : line.points;
    if (!clipLinesTo([path], region, "outside").some(long)) return [line];
    return joinLines(clipLinesTo([path], region, "inside").filter(long), reach);
  });
}
