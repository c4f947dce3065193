/**
 * The flat strip on which the pattern is completed: its grid, its symmetry, its rows and the tiles worked at once.
 *
 * A pattern that goes all the way round is worked on a few tiles on either side of tile 0, of which one period is
 * taken; a pattern that stops is worked on all its tiles.
 */
import type { Point2 } from "../math/point.js";
import { type Fit, FULL_COVER } from "./fit.js";
import { type Grid, type GridPath, type GridPoint, gridFor, operatePath, shiftPath } from "./grid.js";
import { type FriezeGroup, type FriezeName, friezeGroup } from "./symmetry.js";

export interface Strip {
  readonly grid: Grid;
  readonly group: FriezeGroup;
  /** Tile width and height, mm. */
  readonly tileWidth: number;
  readonly tileHeight: number;
  /** Aspect of the tile as the art sees it: the path's y runs over ± half of it. */
  readonly aspect: number;
  readonly repeats: number;
  readonly rows: number;
  /** Whether the pattern goes all the way round. */
  readonly periodic: boolean;
  /** First and last tile worked. */
  readonly tiles: readonly [number, number];
  /** Middle line of each row and the step between rows, grid steps. */
  readonly rowMiddles: readonly number[];
  readonly rowStep: number;
  /** Half the seat's length, grid steps. */
  readonly halfSeat: number;
  /** Largest deviation of flattened art, mm, and the same in grid steps. */
  readonly artTolerance: number;
  readonly arcTolerance: number;
}

/** Tiles worked on each side of a periodic strip's tile 0: art may reach one tile over, and a period stay clear of the ends. */
const SIDE_TILES = 3;

/** Share of the mesh tolerance that flattening the art may use; bending takes the rest. */
const ART_SHARE = 0.5;

/** The strip for a fit. `seatLength` and `tolerance` in mm. */
export function makeStrip(fit: Fit, symmetry: FriezeName, seatLength: number, tolerance: number): Strip {
  const { tileWidth, tileHeight, repeats, rows, cover } = fit;
  const grid = gridFor(tileWidth);
  const halfRow = Math.round((tileHeight * grid.scale) / 2);
  const periodic = cover === FULL_COVER;
  const artTolerance = tolerance * ART_SHARE;
  return {
    grid,
    group: friezeGroup(symmetry),
    tileWidth,
    tileHeight,
    aspect: fit.aspect,
    repeats,
    rows,
    periodic,
    tiles: periodic ? [-SIDE_TILES, SIDE_TILES] : [0, repeats - 1],
    rowMiddles: Array.from({ length: rows }, (_, row) => (2 * row - rows + 1) * halfRow),
    rowStep: 2 * halfRow,
    halfSeat: Math.round((seatLength / 2) * grid.scale),
    artTolerance,
    arcTolerance: artTolerance * grid.scale,
  };
}

/** All images of drawn paths in the tiles worked: every operation of the group, every row, every tile. */
export function imagesOf(strip: Strip, paths: readonly GridPath[]): { path: GridPath; flipped: boolean }[] {
  const { grid, group, rowMiddles, tiles } = strip;
  const images: { path: GridPath; flipped: boolean }[] = [];
  for (const operation of group.operations) {
    for (const path of paths) {
      const image = operatePath(grid, path, operation);
      for (const middle of rowMiddles) {
        for (let tile = tiles[0]; tile <= tiles[1]; tile++) {
          images.push({
            path: shiftPath(image, tile * grid.tile, middle),
            flipped: operation.flipX !== operation.flipY,
          });
        }
      }
    }
  }
  return images;
}

/** A point in grid steps as (u, v), mm. */
export function flatPoint(strip: Strip, point: GridPoint): Point2 {
  return [point.x / strip.grid.scale, point.y / strip.grid.scale];
}

/** Millimetres as grid steps. */
export function steps(strip: Strip, mm: number): number {
  return mm * strip.grid.scale;
}

/** Whether a stretch of x lies where neither end of a periodic strip can have touched it; always so in a whole one. */
export function clearOfEnds(strip: Strip, low: number, high: number): boolean {
  if (!strip.periodic) return true;
  const tile = strip.grid.tile;
  return high > -CLEAR_TILES * tile && low < (1 + CLEAR_TILES) * tile;
}

/** Tiles beyond tile 0 on each side in which every image that belongs there is present. */
const CLEAR_TILES = 0.6;
