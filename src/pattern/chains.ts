/**
 * Joins open lines whose ends meet into longer lines and loops, so that a quarter of a motif drawn once becomes, with
 * its images, one line that a ribbon or a bead run follows round the corner without a notch.
 */
import type { GridPath, GridPoint } from "./grid.js";

/** A line after joining. A closed one does not repeat its first point. */
export interface Chain {
  readonly points: GridPath;
  readonly closed: boolean;
}

/** Joins lines end to end where exactly two ends lie within `reach` grid steps. Images that coincide count once. */
export function joinLines(lines: readonly GridPath[], reach: number): Chain[] {
  const distinct = dropCoincident(lines, reach);
  const partners = findPartners(distinct, reach);
  const used = new Array<boolean>(distinct.length).fill(false);
  const chains: Chain[] = [];
  for (let i = 0; i < distinct.length; i++) {
    if (used[i]) continue;
    chains.push(follow(distinct, partners, used, leftmostEnd(partners, 2 * i)));
  }
  return chains;
}

/** Line ends are numbered 2 i (start of line i) and 2 i + 1 (its end). */
type EndIndex = number;

function endPoint(lines: readonly GridPath[], end: EndIndex): GridPoint {
  const line = lines[end >> 1];
  return end % 2 === 0 ? line[0] : (line.at(-1) as GridPoint);
}

/** Walks back from an end to where its chain begins (or round a loop to itself). */
function leftmostEnd(partners: readonly (EndIndex | undefined)[], start: EndIndex): EndIndex {
  let end = start;
  for (let before = partners[end]; before !== undefined; before = partners[end]) {
    end = before ^ 1;
    if (end === start) break;
  }
  return end;
}

function follow(
  lines: readonly GridPath[],
  partners: readonly (EndIndex | undefined)[],
  used: boolean[],
  start: EndIndex,
): Chain {
  const points: GridPath = [];
  let end = start;
  for (;;) {
    used[end >> 1] = true;
    const line = lines[end >> 1];
    const run = end % 2 === 0 ? line : [...line].reverse();
    points.push(...(points.length === 0 ? run : run.slice(1)));
    const next = partners[end ^ 1];
    if (next === undefined) return { points, closed: false };
    if (next === start) return { points: points.slice(0, -1), closed: true };
    end = next;
  }
}

/** For each end, the one other end that meets it; undefined where none or several do. */
function findPartners(lines: readonly GridPath[], reach: number): (EndIndex | undefined)[] {
  const ends = Array.from({ length: 2 * lines.length }, (_, end) => end);
  const order = ends.sort((a, b) => endPoint(lines, a).x - endPoint(lines, b).x);
  const meeting: EndIndex[][] = ends.map(() => []);
  for (let i = 0; i < order.length; i++) {
    const here = endPoint(lines, order[i]);
    for (let j = i + 1; j < order.length; j++) {
      const there = endPoint(lines, order[j]);
      if (there.x - here.x > reach) break;
      if (Math.abs(there.y - here.y) > reach) continue;
      meeting[order[i]].push(order[j]);
      meeting[order[j]].push(order[i]);
    }
  }
  return meeting.map((others) => (others.length === 1 && meeting[others[0]].length === 1 ? others[0] : undefined));
}

function dropCoincident(lines: readonly GridPath[], reach: number): GridPath[] {
  const kept: GridPath[] = [];
  const reversed: GridPath[] = [];
  for (const line of lines) {
    const twice = kept.some((other, i) => coincide(line, other, reach) || coincide(line, reversed[i], reach));
    if (twice) continue;
    kept.push(line);
    reversed.push([...line].reverse());
  }
  return kept;
}

/** Compared at the ends first, then at points evenly along the line. */
function coincide(a: GridPath, b: GridPath, reach: number): boolean {
  const near = (p: GridPoint, q: GridPoint) => Math.abs(p.x - q.x) <= reach && Math.abs(p.y - q.y) <= reach;
  if (!near(a[0], b[0]) || !near(a.at(-1) as GridPoint, b.at(-1) as GridPoint)) return false;
  return [1, 2, 3, 4, 5].every((i) => near(along(a, i / 6), along(b, i / 6)));
}

/** The point at a share of the line's length. */
function along(line: GridPath, share: number): GridPoint {
  const lengths = line.map((point, i) => (i === 0 ? 0 : Math.hypot(point.x - line[i - 1].x, point.y - line[i - 1].y)));
  let left = share * lengths.reduce((sum, length) => sum + length, 0);
  for (let i = 1; i < line.length; i++) {
    if (left <= lengths[i]) {
      const t = left / lengths[i];
      return { x: line[i - 1].x + t * (line[i].x - line[i - 1].x), y: line[i - 1].y + t * (line[i].y - line[i - 1].y) };
    }
    left -= lengths[i];
  }
  return line.at(-1) as GridPoint;
}
