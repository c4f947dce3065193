/**
 * The integer grid on which the flat pattern is worked.
 *
 * One tile is a whole number of grid steps wide, divisible by four, so that whole-tile translations, glides by half a
 * tile, mirrors and half turns are exact: a copy meets its neighbour without a rounding step between them.
 */

import type { TileOperation } from "../base/frieze/symmetry.js";
import type { Point2 } from "../base/math/point.js";

/** Grid steps in a millimetre, nearly: a step is about a nanometre, so rounding is far below any tolerance. */
const STEPS_PER_MM = 1e6;

/** A point on the grid; both numbers are integers. */
export interface GridPoint {
  x: number;
  y: number;
}

/** A polyline or ring of grid points. */
export type GridPath = GridPoint[];

/** The scale between millimetres and grid steps for one tile width. */
export interface Grid {
  /** Steps in a tile width, divisible by 4. */
  readonly tile: number;
  /** Steps in a millimetre. */
  readonly scale: number;
}

/** The grid for tiles `tileWidth` mm wide. */
export function gridFor(tileWidth: number): Grid {
  const tile = 4 * Math.round((tileWidth * STEPS_PER_MM) / 4);
  return { tile, scale: tile / tileWidth };
}

/** A flat path, mm, on the grid; points that fall together are dropped. */
export function toGrid(grid: Grid, points: readonly Point2[]): GridPath {
  const path: GridPath = [];
  for (const [u, v] of points) {
    const point = { x: Math.round(u * grid.scale), y: Math.round(v * grid.scale) };
    const last = path.at(-1);
    if (last === undefined || last.x !== point.x || last.y !== point.y) path.push(point);
  }
  return path;
}

/** A grid path in mm. */
export function fromGrid(grid: Grid, path: readonly GridPoint[]): Point2[] {
  return path.map(({ x, y }) => [x / grid.scale, y / grid.scale]);
}

/** The path moved by grid steps. */
export function shiftPath(path: readonly GridPoint[], dx: number, dy: number): GridPath {
  return path.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
}

/** The path under a symmetry operation of its tile. Direction of travel is kept; a flip therefore turns a ring over. */
export function operatePath(grid: Grid, path: readonly GridPoint[], operation: TileOperation): GridPath {
  const shift = operation.shift * grid.tile;
  return path.map(({ x, y }) => ({ x: (operation.flipX ? -x : x) + shift, y: operation.flipY ? -y : y }));
}
