/**
 * Reads a drawn path: flattened, in mm on its tile, not further from the tile than art may reach.
 */
import { AnnuletError } from "../base/errors.js";
import { flattenPath } from "../base/math/path-data.js";
import type { Point2 } from "../base/math/point.js";
import type { DrawingUnit } from "../design/path-schema.js";
import { type GridPath, toGrid } from "../flat/grid.js";
import type { GridRegion } from "../flat/polygons.js";
import type { Strip } from "../flat/strip.js";
import { nearPairs } from "../flat/tangled.js";

/** A path as the document gives it. */
export interface ArtSource {
  /** SVG path data. */
  readonly path: string;
  readonly unit: DrawingUnit;
  /** Whether it may leave the tile across, beneath the rails. Default no. */
  readonly beneath?: boolean | undefined;
}

/** A drawn path's subpaths on the grid, about the middle line of a row, before symmetry. */
export interface DrawnPaths {
  /** Each of three points or more; the last is not the first again. */
  readonly closed: readonly GridPath[];
  /** Each of two points or more. */
  readonly open: readonly GridPath[];
}

/** How far, in tiles, art may reach beyond its own tile. */
const REACH_TILES = 1;

/** How much further, in tiles, a drawing may reach that is yet to be moved or cut to its place. */
export const LEAF_MORE_TILES = 20;

/** Rounding of drawn numbers that is let pass at the tile's limits, tile widths. */
const REACH_SLACK = 1e-6;

/** Millimetres in the unit of a drawing, along the band and across it. Where a tile is stretched the two differ. */
export function unitScale(strip: Strip, unit: DrawingUnit): [along: number, across: number] {
  return unit === "mm" ? [1, 1] : [strip.tileWidth, strip.tileHeight / strip.aspect];
}

/**
 * Reads a path.
 *
 * @param tolerance largest chordal deviation, mm
 * @param where the path's place in the document, for errors
 * @param more tiles that it may reach further than art in its place may; default 0
 * @throws AnnuletError `path-empty`, `path-outside-tile`, `path-too-tangled`, and as `flattenPath`
 */
export function readArt(strip: Strip, source: ArtSource, tolerance: number, where: string, more = 0): DrawnPaths {
  const [sx, sy] = unitScale(strip, source.unit);
  const subpaths = flattenPath(source.path, tolerance / Math.max(sx, sy), { path: where }).map(
    ({ points, closed }) => ({ points: points.map(([x, y]): Point2 => [x * sx, y * sy]), closed }),
  );
  checkReach(strip, subpaths, { ...source, value: source.path, what: "the path" }, where, more);
  const onGrid = (closed: boolean, least: number) =>
    subpaths
      .filter((subpath) => subpath.closed === closed)
      .map(({ points }) => toGrid(strip.grid, points))
      .filter((path) => path.length >= least);
  const drawn = { closed: onGrid(true, 3), open: onGrid(false, 2) };
  refuseTangled([...drawn.closed, ...drawn.open], where);
  if (drawn.closed.length > 0 || drawn.open.length > 0) return drawn;
  throw new AnnuletError({
    code: "path-empty",
    message: "the path draws nothing",
    path: where,
    value: source.path,
    allowed: "at least one open line of some length, or a closed one about some area",
  });
}

/**
 * Most pairs of edges of a path that may lie near enough to cross. Chosen: a union of as many takes 0.2 s of CPU (measured
 * on random zigzags of 100 to 700 corners).
 */
const MOST_PAIRS = 100_000;

function refuseTangled(paths: GridRegion, where: string): void {
  if (nearPairs(paths, MOST_PAIRS) <= MOST_PAIRS) return;
  throw new AnnuletError({
    code: "path-too-tangled",
    message: "the path is too tangled: its lines lie across each other",
    path: where,
    allowed: `at most ${MOST_PAIRS} near pairs`,
    hint: "draw it more simply: a tile is a few millimetres wide",
  });
}

/**
 * Art may reach into the neighbouring tile, not further: beyond that the unit or the place is a mistake.
 *
 * @param more tiles that it may reach further; default 0
 */
export function checkReach(
  strip: Strip,
  subpaths: readonly { readonly points: readonly Point2[] }[],
  source: Pick<ArtSource, "unit" | "beneath"> & { readonly value: unknown; readonly what: string },
  where: string,
  more = 0,
): void {
  const { tileWidth, tileHeight } = strip;
  const along = (REACH_TILES + more) * tileWidth;
  const halfHeight = (strip.rows * tileHeight) / 2 + (more + (source.beneath ? REACH_TILES : 0)) * tileHeight;
  const slack = tileWidth * REACH_SLACK;
  for (const { points } of subpaths) {
    for (const [u, v] of points) {
      const beyond = u < -along - slack || u > tileWidth + along + slack;
      if (!beyond && Math.abs(v) <= halfHeight + slack) continue;
      const unit = unitScale(strip, source.unit);
      throw new AnnuletError({
        code: "path-outside-tile",
        message: `${source.what} leaves its tile at x ${showNumber(u / unit[0])}, y ${showNumber(v / unit[1])}`,
        path: where,
        value: source.value,
        allowed: `x from ${showNumber(-along / unit[0])} to ${showNumber((tileWidth + along) / unit[0])}, y within ±${showNumber(halfHeight / unit[1])} (unit ${source.unit})`,
        hint:
          source.unit === "tile"
            ? 'a tile is 1 wide and `aspect` high; say "unit": "mm" where the path is in millimetres'
            : 'say "unit": "tile" where the path is in tile widths',
      });
    }
  }
}

function showNumber(value: number): string {
  return String(Number(value.toFixed(3)));
}
