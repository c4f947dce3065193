/**
 * Reads a drawn path: flattened, in mm on its tile, not further from the tile than art may reach.
 */
import { AnnuletError } from "../errors.js";
import { flattenPath } from "../math/path-data.js";
import type { Point2 } from "../math/point.js";
import { type GridPath, toGrid } from "./grid.js";
import type { Strip } from "./strip.js";

/** A path as the document gives it. */
export interface ArtSource {
  /** SVG path data. */
  readonly path: string;
  readonly unit: "tile" | "mm";
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

/** Rounding of drawn numbers that is let pass at the tile's limits, tile widths. */
const REACH_SLACK = 1e-6;

/**
 * Reads a path.
 *
 * @param tolerance largest chordal deviation, mm
 * @param where the path's place in the document, for errors
 * @throws AnnuletError `path-empty`, `path-outside-tile`, and as `flattenPath`
 */
export function readArt(strip: Strip, source: ArtSource, tolerance: number, where: string): DrawnPaths {
  const [sx, sy] = source.unit === "mm" ? [1, 1] : [strip.tileWidth, strip.tileHeight / strip.aspect];
  const subpaths = flattenPath(source.path, tolerance / Math.max(sx, sy), { path: where }).map(
    ({ points, closed }) => ({ points: points.map(([x, y]): Point2 => [x * sx, y * sy]), closed }),
  );
  checkReach(strip, subpaths, { unit: source.unit, value: source.path, what: "the path" }, where);
  const onGrid = (closed: boolean, least: number) =>
    subpaths
      .filter((subpath) => subpath.closed === closed)
      .map(({ points }) => toGrid(strip.grid, points))
      .filter((path) => path.length >= least);
  const drawn = { closed: onGrid(true, 3), open: onGrid(false, 2) };
  if (drawn.closed.length > 0 || drawn.open.length > 0) return drawn;
  throw new AnnuletError({
    code: "path-empty",
    message: "the path draws nothing",
    path: where,
    value: source.path,
    allowed: "at least one open line of some length, or a closed one about some area",
  });
}

/** Art may reach into the neighbouring tile, not further: beyond that the unit or the place is a mistake. */
export function checkReach(
  strip: Strip,
  subpaths: readonly { readonly points: readonly Point2[] }[],
  source: { readonly unit: ArtSource["unit"]; readonly value: unknown; readonly what: string },
  where: string,
): void {
  const { tileWidth, tileHeight, aspect } = strip;
  const halfHeight = (strip.rows * tileHeight) / 2;
  const slack = tileWidth * REACH_SLACK;
  for (const { points } of subpaths) {
    for (const [u, v] of points) {
      const beyond = u < -REACH_TILES * tileWidth - slack || u > (1 + REACH_TILES) * tileWidth + slack;
      if (!beyond && Math.abs(v) <= halfHeight + slack) continue;
      const unit = source.unit === "mm" ? [1, 1] : [tileWidth, tileHeight / aspect];
      throw new AnnuletError({
        code: "path-outside-tile",
        message: `${source.what} leaves its tile at x ${showNumber(u / unit[0])}, y ${showNumber(v / unit[1])}`,
        path: where,
        value: source.value,
        allowed: `x from ${showNumber((-REACH_TILES * tileWidth) / unit[0])} to ${showNumber(((1 + REACH_TILES) * tileWidth) / unit[0])}, y within ±${showNumber(halfHeight / unit[1])} (unit ${source.unit})`,
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
