/**
 * Moves corners of copies on to each other where they meet but for rounding, so that what should touch does not leave a
 * gap of a grid step.
 */
import type { GridPoint } from "../../flat/grid.js";
import type { GridRegion } from "../../flat/polygons.js";

/** Corners of different copies that are this near, grid steps, are one: each coordinate was rounded once. */
const SNAP = 2;

/** Width of a cell in which corners are looked for, grid steps; a corner that is near lies in one of four cells at most. */
const CELL = 2 * SNAP;

/** Cells in a column that keep keys apart; beyond it keys may agree, and corners are compared in vain. */
const COLUMN = 2 ** 24;

/** All rings, the corners of later copies moved on to those of earlier ones. */
export function snapTogether(copies: readonly GridRegion[]): GridRegion {
  const cells = new Map<number, GridPoint[]>();
  return copies.flatMap((rings) => {
    const snapped = rings.map((ring) => ring.map((point) => findNear(cells, point) ?? point));
    for (const ring of snapped) for (const point of ring) addPoint(cells, point);
    return snapped;
  });
}

function keyOf(x: number, y: number): number {
  return Math.floor(x / CELL) * COLUMN + Math.floor(y / CELL);
}

function addPoint(cells: Map<number, GridPoint[]>, point: GridPoint): void {
  const key = keyOf(point.x, point.y);
  const there = cells.get(key);
  if (there === undefined) cells.set(key, [point]);
  else if (!there.includes(point)) there.push(point);
}

function findNear(cells: ReadonlyMap<number, readonly GridPoint[]>, { x, y }: GridPoint): GridPoint | undefined {
  const keys = new Set([-SNAP, SNAP].flatMap((dx) => [-SNAP, SNAP].map((dy) => keyOf(x + dx, y + dy))));
  for (const key of keys) {
    const found = cells.get(key)?.find((other) => Math.abs(other.x - x) <= SNAP && Math.abs(other.y - y) <= SNAP);
    if (found !== undefined) return found;
  }
  return undefined;
}
