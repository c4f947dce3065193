/**
 * Makes one line of two that run over each other for a span, each going on beyond the other at one end: a line and its
 * image under a symmetry that leaves the endless line as it is, but begins it elsewhere.
 */
import { type GridBox, ringBox } from "./box.js";
import { liesOn } from "./coincide.js";
import type { GridPath, GridPoint } from "./grid.js";

/** A span this many reaches long is more than ends that meet. */
const LEAST_STRETCH = 10;

/** Open lines with all that overlap joined; those that lie wholly on another one are left out. */
export function joinOverlaps(lines: readonly GridPath[], reach: number): GridPath[] {
  const kept: { path: GridPath; box: GridBox }[] = [];
  const waiting = [...lines].reverse();
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const own = { path, box: ringBox(path) };
    let joined: GridPath | undefined;
    const at = kept.findIndex((other) => {
      if (!meet(own.box, other.box, reach)) return false;
      joined = joinTwo(own.path, other.path, reach);
      return joined !== undefined;
    });
    if (joined === undefined) kept.push(own);
    else if (joined !== kept[at].path) {
      // It may reach others now. Each joining leaves one line fewer, so this ends.
      kept.splice(at, 1);
      waiting.push(joined);
    }
  }
  return kept.map(({ path }) => path);
}

function meet(a: GridBox, b: GridBox, reach: number): boolean {
  return a.left <= b.right + reach && b.left <= a.right + reach && a.low <= b.high + reach && b.low <= a.high + reach;
}

/** The one line that two are; undefined where they are two. */
function joinTwo(a: GridPath, b: GridPath, reach: number): GridPath | undefined {
  const turnedA = [a, a.toReversed()].filter(([start]) => sideOf(b, start, reach) !== -1);
  if (turnedA.length === 0) return sideOf(a, b[0], reach) !== -1 && liesOn(b, a, false, reach) ? a : undefined;
  if (liesOn(a, b, false, reach)) return b;
  if (liesOn(b, a, false, reach)) return a;
  for (const from of turnedA) {
    for (const to of [b, b.toReversed()]) {
      const end = to[to.length - 1];
      const side = sideOf(from, end, reach);
      if (side === -1 || apart(from[0], end) < LEAST_STRETCH * reach) continue;
      const stretch = [...from.slice(0, side + 1), end];
      if (!liesOn(stretch, to, false, reach)) continue;
      const rest = from.slice(side + 1);
      return [...to, ...(apart(rest[0], end) <= reach ? rest.slice(1) : rest)];
    }
  }
  return undefined;
}

/** Number of the side of a line on which a point lies; -1 where on none. */
function sideOf(path: GridPath, point: GridPoint, reach: number): number {
  for (let i = 0; i + 1 < path.length; i++) if (distance(point, path[i], path[i + 1]) <= reach) return i;
  return -1;
}

/** From a point to a side. */
function distance({ x, y }: GridPoint, a: GridPoint, b: GridPoint): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = dx * dx + dy * dy;
  const share = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / length));
  return Math.hypot(x - a.x - share * dx, y - a.y - share * dy);
}

function apart(p: GridPoint, q: GridPoint): number {
  return Math.hypot(p.x - q.x, p.y - q.y);
}
