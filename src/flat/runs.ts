/**
 * Lines for bead runs: the loops, open lines and endless strands of a completed strip, one of each kind that repeats.
 *
 * Loops that are images of each other under the symmetry get images of one start, on a mirror where the loop crosses
 * one, so that the beads are as symmetric as the motif.
 */

import type { TileOperation } from "../base/frieze/symmetry.js";
import type { Point2 } from "../base/math/point.js";
import { ringBox } from "./box.js";
import type { Chain } from "./chains.js";
import { type BoxedLine, boxed, coincide, liesOn } from "./coincide.js";
import { type GridPath, type GridPoint, operatePath, shiftPath } from "./grid.js";
import { flatPoint, inFirstPeriod, type Strip, steps } from "./strip.js";

/** A line that a bead run follows. */
export interface RunLine {
  /** (u, v), mm. A loop does not repeat its first point; a strand ends one period after its start. */
  readonly points: readonly Point2[];
  /** loop: closed by itself; open: both ends carry a bead; strand: goes on into the next period, all the way round. */
  readonly kind: "loop" | "open" | "strand";
  /** Whether only an even number of beads is as symmetric as the line. */
  readonly even: boolean;
  /** Whether a symmetry turns an open line end for end. Default no. */
  readonly reverses?: boolean;
}

/** Two points this near are one, mm: offsets round to nanometres, joins to micrometres. */
const SAME_REACH = 5e-3;

/** The lines of one period (of the whole strip where it is not periodic). */
export function runLines(strip: Strip, chains: readonly Chain[]): RunLine[] {
  const inTile = (path: GridPath) => !strip.periodic || inFirstPeriod(strip, path);
  const loops = chains.filter((chain) => chain.closed && !isEndless(strip, chain.points)).map(({ points }) => points);
  const lines = chains.filter((chain) => !chain.closed && !isEndless(strip, chain.points)).map(({ points }) => points);
  const endless = chains.filter(({ points }) => isEndless(strip, points));
  return [
    ...symmetricLoops(strip, loops.filter(inTile)),
    ...lines
      .filter(inTile)
      .map((points) => ({ ...toLine(strip, points, "open", false), reverses: turnsItself(strip, points) })),
    ...distinctStrands(strip, endless),
  ];
}

function toLine(strip: Strip, points: GridPath, kind: RunLine["kind"], even: boolean): RunLine {
  return { points: points.map((point) => flatPoint(strip, point)), kind, even };
}

/** Whether the line runs through both ends of the periodic strip. */
function isEndless(strip: Strip, path: GridPath): boolean {
  if (!strip.periodic) return false;
  const { left, right } = ringBox(path);
  return left < -strip.grid.tile && right > strip.period + strip.grid.tile;
}

/** Whether an operation brings an open line on to itself with its ends exchanged. */
function turnsItself(strip: Strip, line: GridPath): boolean {
  const own = boxed(line);
  const reach = steps(strip, SAME_REACH);
  return strip.group.operations.some((operation) => {
    const image = aboutRow(strip, line, operation)(line);
    const shift = placeOn(strip, image, own, false);
    if (shift === undefined) return false;
    const [[start], end] = [image, line[line.length - 1]];
    return Math.hypot(start.x + shift[0] - end.x, start.y + shift[1] - end.y) <= 2 * reach;
  });
}

/** Loops in groups of images: one is given its start, the others take the images of that start. */
function symmetricLoops(strip: Strip, loops: readonly GridPath[]): RunLine[] {
  const left = new Map(loops.map((loop) => [loop, boxed(loop)]));
  const lines: RunLine[] = [];
  for (const [loop, own] of left) {
    left.delete(loop);
    const images = strip.group.operations.map((operation) => ({ operation, about: aboutRow(strip, loop, operation) }));
    const selves = images.filter(({ about }) => placeOn(strip, about(loop), own) !== undefined);
    const started = startLoop(
      strip,
      loop,
      selves.map(({ operation }) => operation),
    );
    const even = selves.length > 2 || selves.some(({ operation: { flipX, flipY } }) => flipX && flipY);
    lines.push(toLine(strip, started, "loop", even));
    for (const [other, place] of left) {
      for (const { about } of images) {
        const shift = placeOn(strip, about(loop), place);
        if (shift === undefined) continue;
        left.delete(other);
        lines.push(toLine(strip, shiftPath(about(started), ...shift), "loop", even));
        break;
      }
    }
  }
  return lines;
}

/** The operation about the middle line of the row that the loop lies in. */
function aboutRow(strip: Strip, loop: GridPath, operation: TileOperation): (path: GridPath) => GridPath {
  const home = nearestRow(strip, loop);
  return (path) => operatePath(strip.grid, shiftPath(path, 0, -home), operation);
}

/** By how many whole tiles and rows the image must be moved to be the other loop; undefined where it is not that. */
function placeOn(strip: Strip, image: GridPath, other: BoxedLine, closed = true): [dx: number, dy: number] | undefined {
  const { tile } = strip.grid;
  const { left } = ringBox(image);
  const dx = Math.round((other.box.left - left) / tile) * tile;
  return strip.rowMiddles
    .map((dy): [number, number] => [dx, dy])
    .find((shift) => coincide(boxed(shiftPath(image, ...shift)), other, closed, steps(strip, SAME_REACH)));
}

function nearestRow(strip: Strip, path: GridPath): number {
  const { low, high } = ringBox(path);
  const middle = (low + high) / 2;
  return strip.rowMiddles.reduce((best, row) => (Math.abs(row - middle) < Math.abs(best - middle) ? row : best));
}

/** The loop from its start: where it crosses a mirror of its own, else at its sharpest corner. */
function startLoop(strip: Strip, loop: GridPath, selves: readonly TileOperation[]): GridPath {
  const mirror = selves.find(({ flipX, flipY, shift }) => flipX !== flipY && shift === 0);
  if (mirror === undefined) return rotateTo(loop, sharpest(loop));
  const box = ringBox(loop);
  const across = mirror.flipX;
  const axis = across ? (box.left + box.right) / 2 : (box.low + box.high) / 2;
  const side = ({ x, y }: GridPoint) => (across ? x : y) - axis;
  const reach = steps(strip, SAME_REACH);
  const onAxis = loop.flatMap((point, i) => (Math.abs(side(point)) <= reach ? [i] : []));
  if (onAxis.length > 0)
    return rotateTo(
      loop,
      onAxis.reduce((best, i) => (cornerAt(loop, i) > cornerAt(loop, best) ? i : best)),
    );
  const crossing = loop.findIndex((point, i) => side(point) > 0 !== side(loop[(i + 1) % loop.length]) > 0);
  const [a, b] = [loop[crossing], loop[(crossing + 1) % loop.length]];
  const t = side(a) / (side(a) - side(b));
  const start = { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
  return [start, ...rotateTo(loop, (crossing + 1) % loop.length)];
}

function rotateTo(loop: GridPath, start: number): GridPath {
  return [...loop.slice(start), ...loop.slice(0, start)];
}

function sharpest(loop: GridPath): number {
  let best = 0;
  let most = cornerAt(loop, 0);
  for (let i = 1; i < loop.length; i++) {
    const turn = cornerAt(loop, i);
    if (turn > most) [best, most] = [i, turn];
  }
  return best;
}

/** How far the loop turns at a vertex, radians, 0 to π. */
function cornerAt(loop: GridPath, i: number): number {
  const [a, b, c] = [loop[(i + loop.length - 1) % loop.length], loop[i], loop[(i + 1) % loop.length]];
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - b.x, c.y - b.y];
  return Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
}

/** The strands of endless lines, each once: images may be one line that is drawn from different places. */
function distinctStrands(strip: Strip, chains: readonly Chain[]): RunLine[] {
  const found: (Strand & BoxedLine)[] = [];
  for (const chain of chains) {
    for (const strand of strands(strip, chain)) {
      const placed = { ...strand, ...boxed(strand.path) };
      if (!found.some((other) => coincide(placed, other, false, steps(strip, SAME_REACH)))) found.push(placed);
    }
  }
  return found.map(({ path, closes }) =>
    toLine(strip, path, closes ? "strand" : "open", closes && needsEven(strip, path)),
  );
}

/** A span of an endless line, one period long. */
interface Strand {
  readonly path: GridPath;
  /** Whether it ends where it began, one period on. */
  readonly closes: boolean;
}

/** The strands of an endless line: each from a crossing of x = 0 to the same place one period on. */
function strands(strip: Strip, chain: Chain): Strand[] {
  const { period } = strip;
  const reach = steps(strip, SAME_REACH);
  const found: Strand[] = [];
  for (const path of directed(chain)) {
    const starts = crossingsOf(path, 0).filter(({ forward }) => forward);
    for (const start of starts) {
      const ends = crossingsOf(path, period).filter(({ forward, at }) => forward && at >= start.at);
      const end = ends.find(({ y }) => Math.abs(y - start.y) <= reach) ?? (chain.closed ? undefined : ends[0]);
      if (end === undefined) continue;
      const between = path.slice(Math.floor(start.at) + 1, Math.floor(end.at) + 1);
      const points = dropRepeats([{ x: 0, y: start.y }, ...between, { x: period, y: end.y }]);
      const closes = Math.abs(end.y - start.y) <= reach;
      found.push({ path: points, closes });
      if (closes) break;
    }
  }
  return found;
}

/** A line in both directions of travel; a closed one unrolled twice, so that no stretch is broken by where it starts. */
function directed({ points, closed }: Chain): GridPath[] {
  const path = closed ? [...points, ...points] : points;
  return [path, [...path].reverse()];
}

interface Crossing {
  /** Index along the path, with the share of the side walked. */
  readonly at: number;
  readonly y: number;
  readonly forward: boolean;
}

function crossingsOf(path: GridPath, x: number): Crossing[] {
  const found: Crossing[] = [];
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    if (a.x < x === b.x < x) continue;
    const t = (x - a.x) / (b.x - a.x);
    found.push({ at: i + t, y: a.y + t * (b.y - a.y), forward: b.x > a.x });
  }
  return found;
}

function dropRepeats(path: GridPath): GridPath {
  return path.filter((point, i) => i === 0 || point.x !== path[i - 1].x || point.y !== path[i - 1].y);
}

/** A strand that a glide brings onto itself is only symmetric with an even number of beads a period. */
function needsEven(strip: Strip, path: GridPath): boolean {
  const glide = strip.group.operations.find(({ flipX, shift }) => !flipX && shift !== 0);
  if (glide === undefined) return false;
  const home = nearestRow(strip, path);
  const image = shiftPath(operatePath(strip.grid, shiftPath(path, 0, -home), glide), 0, home);
  const twice = [...path, ...shiftPath(path, strip.period, 0)];
  const before = shiftPath(path, -strip.period, 0);
  return liesOn(image, [...before, ...twice], false, steps(strip, SAME_REACH));
}
