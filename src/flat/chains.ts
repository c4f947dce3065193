/**
 * Joins open lines whose ends meet into longer lines and loops, so that a quarter of a motif drawn once becomes, with
 * its images, one line that a ribbon or a bead run follows round the corner without a notch.
 */
import { type BoxedLine, boxed, coincide } from "./coincide.js";
import type { GridPath, GridPoint } from "./grid.js";
import { joinOverlaps } from "./overlaps.js";

/** Ends of lines nearer than this are one point, mm: art is drawn to three decimals at best. */
export const JOIN_REACH = 1e-3;

/** A line after joining. A closed one does not repeat its first point. */
export interface Chain {
  readonly points: GridPath;
  readonly closed: boolean;
}

/**
 * Joins lines end to end where exactly two ends lie within `reach` grid steps. Lines that coincide count once.
 *
 * @param lines each of two points or more; a loop repeats its first point
 */
export function joinLines(lines: readonly GridPath[], reach: number): Chain[] {
  const distinct = dropCoincident(lines, reach);
  const partners = findPartners(distinct, reach);
  const used = new Array<boolean>(distinct.length).fill(false);
  const chains: Chain[] = [];
  for (let i = 0; i < distinct.length; i++) {
    if (used[i]) continue;
    chains.push(follow(distinct, partners, used, leftmostEnd(partners, 2 * i)));
  }
  return dropSameLoops(withoutOverlaps(chains, reach), reach);
}

/** Open lines that run over each other for a span are one line. */
function withoutOverlaps(chains: readonly Chain[], reach: number): readonly Chain[] {
  const open = chains.filter(({ closed }) => !closed).map(({ points }) => points);
  const apart = joinOverlaps(open, reach);
  if (apart.length === open.length) return chains;
  const joined = apart.map((points): Chain => {
    const closed = points.length > 3 && near(points[0], points[points.length - 1], reach);
    return { points: closed ? points.slice(0, -1) : points, closed };
  });
  return [...chains.filter(({ closed }) => closed), ...joined];
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

/** Leaves out each line that is another one again: an image of itself on a mirror, or drawn twice. */
function dropCoincident(lines: readonly GridPath[], reach: number): GridPath[] {
  const kept: (BoxedLine & { readonly closed: boolean })[] = [];
  for (const path of lines) {
    const line = { ...boxed(path), closed: near(path[0], path[path.length - 1], reach) };
    const twice = kept.some(
      (other) =>
        other.closed === line.closed &&
        (line.closed || sameEnds(path, other.path, reach)) &&
        coincide(line, other, false, reach),
    );
    if (!twice) kept.push(line);
  }
  return kept.map(({ path }) => path);
}

/** Leaves out loops that are another one again, put together from other lines. */
function dropSameLoops(chains: readonly Chain[], reach: number): Chain[] {
  const loops: BoxedLine[] = [];
  return chains.filter(({ points, closed }) => {
    if (!closed) return true;
    const loop = boxed(points);
    if (loops.some((other) => coincide(loop, other, true, reach))) return false;
    loops.push(loop);
    return true;
  });
}

function sameEnds(a: GridPath, b: GridPath, reach: number): boolean {
  const [start, end] = [a[0], a[a.length - 1]];
  const [first, last] = [b[0], b[b.length - 1]];
  return (near(start, first, reach) && near(end, last, reach)) || (near(start, last, reach) && near(end, first, reach));
}

/** Whether two points are one, to within `reach` grid steps. */
export function near(p: GridPoint, q: GridPoint, reach: number): boolean {
  return Math.abs(p.x - q.x) <= reach && Math.abs(p.y - q.y) <= reach;
}
