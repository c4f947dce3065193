/**
 * What becomes of a completed region: grown or shrunk, kept within other regions, kept clear of others.
 */
import { z } from "zod";
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { type Chain, joinLines } from "../flat/chains.js";
import type { GridPath } from "../flat/grid.js";
import { largestInset } from "../flat/largest-inset.js";
import { clipLinesTo, type GridRegion, grow, intersect, offset, subtract, unite } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";

const regionName = z.string().min(1).max(200);

/** Most regions that one names. Chosen. */
const MAX_OTHERS = 100;

/**
 * How far regions that meet along another's outline lie over it, mm. Bodies whose walls coincide do not unite cleanly:
 * without it 11 of 256 random rings or more did not close, with it none of 287 for that reason. Chosen: above the 8 µm
 * below which hairlines are cleaned, below what finishing takes off.
 */
export const LAP = 0.02;

/** The fields of a region that compose it with others once symmetry has completed it. */
export const composeFields = {
  offset: z
    .number()
    .min(-5)
    .max(5)
    .optional()
    .describe("how far the completed region, or its ribbon, is grown, mm, -5 to 5; below 0 it is shrunk; default 0"),
  within: z
    .array(regionName)
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "names of regions of this list: only what lies in any of them, as completed, is kept, and 0.02 mm more along their outlines, so that bodies join; default all is",
    ),
  without: z
    .array(
      z.union([
        regionName,
        z.strictObject({
          region: regionName.describe("name of a region of this list"),
          gap: z.number().min(LAP).max(5).describe(`clearance kept from it, mm, ${LAP} to 5; without one the two meet`),
        }),
      ]),
    )
    .min(1)
    .max(MAX_OTHERS)
    .optional()
    .describe(
      "regions of this list, by name or as {region, gap}, that are taken away from it as completed; where there is no gap the two lie over each other by 0.02 mm, so that bodies join; default none",
    ),
};

const composeSchema = z.strictObject(composeFields);

/** How a region is composed with others. */
export type ComposeSpec = z.infer<typeof composeSchema>;

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
