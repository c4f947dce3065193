/**
 * Turns long rows of rings a quarter before they are worked, and back.
 *
 * The polygon library sweeps from row to row and keeps all edges that a row meets in one list, which it walks for every edge
 * that begins: for tiles beside each other that takes time as their square. Swept along the strip a row meets one tile.
 */
import type { GridPath } from "./grid.js";

/** Fewer rings are swept as they lie. Chosen: the library's list is short then. */
const MANY_RINGS = 400;

/** Of fewer corners likewise. */
const MANY_CORNERS = 20_000;

/** How many times longer than high what is turned is at the least. */
const LONG = 2;

/**
 * Works rings with the library, turned a quarter where they lie in a long row. The turn is exact.
 *
 * @param isLong whether they count as one: of parts of a row, what holds of all of it. Default as they are themselves
 */
export function sweepAlong(
  lists: readonly (readonly GridPath[])[],
  work: (lists: readonly (readonly GridPath[])[]) => readonly GridPath[],
  isLong = isLongRow(lists.flat()),
): readonly GridPath[] {
  if (!isLong) return work(lists);
  return work(lists.map((paths) => paths.map(turned))).map(turnedBack);
}

/** Whether rings lie in a long row. */
export function isLongRow(paths: readonly GridPath[]): boolean {
  const corners = paths.reduce((sum, path) => sum + path.length, 0);
  if (paths.length < MANY_RINGS && corners < MANY_CORNERS) return false;
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const path of paths) {
    for (const { x, y } of path) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      low = Math.min(low, y);
      high = Math.max(high, y);
    }
  }
  return right - left > LONG * (high - low);
}

/** A quarter turn, not a mirror: rings keep their sense. 0 − x is no negative zero. */
function turned(path: GridPath): GridPath {
  return path.map(({ x, y }) => ({ x: y, y: 0 - x }));
}

function turnedBack(path: GridPath): GridPath {
  return path.map(({ x, y }) => ({ x: 0 - y, y: x }));
}
