/**
 * Lines parallel to a line: every side moved square to itself, the gaps at outer corners bridged, and at inner corners
 * what the moved sides overshoot trimmed off.
 */
import { chordCount } from "../../base/math/curve.js";
import type { Chain } from "../../flat/chains.js";
import type { GridPath, GridPoint } from "../../flat/grid.js";
import { type Join, MITER_LIMIT } from "../../flat/polygons.js";

/** A side, moved. Coordinates are not rounded until the end. */
type Side = readonly [from: GridPoint, to: GridPoint];

/** Sides are trimmed against each other over no more than this many distances along the line, and this many sides. */
const TRIM_DISTANCES = 12;
const MOST_TRIMMED = 400;

/**
 * The line `distance` grid steps to the left of another, to the right where negative. Undefined where the line turns too
 * tightly for it.
 */
export function parallelTo(chain: Chain, distance: number, join: Join, arcTolerance: number): Chain | undefined {
  if (distance === 0) return chain;
  const path = chain.closed ? openAtLongest(chain.points) : chain.points;
  const sides = path.slice(1).map((to, i) => moved(path[i], to, distance));
  const done: Side[] = [sides[0]];
  for (let i = 1; i < sides.length; i++) {
    const last = done[done.length - 1];
    if (isOuter(last, sides[i], distance)) {
      const bridge = bridgeOver(path[i], [last[1], sides[i][0]], { distance, join, arcTolerance });
      for (let k = 0; k + 1 < bridge.length; k++) done.push([bridge[k], bridge[k + 1]]);
      done.push(sides[i]);
      continue;
    }
    const met = trim(done, sides, i, TRIM_DISTANCES * Math.abs(distance));
    if (met === undefined) return undefined;
    const before = done[done.length - 1 - met.back];
    done.length -= met.back + 1;
    done.push([before[0], met.at], [met.at, sides[i + met.ahead][1]]);
    i += met.ahead;
  }
  return { points: vertices(done, chain.closed), closed: chain.closed };
}

/** The loop from the middle of its longest side round to there again, so that it neither begins nor ends at a corner. */
function openAtLongest(loop: GridPath): GridPath {
  const after = (i: number) => loop[(i + 1) % loop.length];
  const length = (i: number) => Math.hypot(after(i).x - loop[i].x, after(i).y - loop[i].y);
  let longest = 0;
  for (let i = 1; i < loop.length; i++) if (length(i) > length(longest)) longest = i;
  const [a, b] = [loop[longest], after(longest)];
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  return [middle, ...loop.slice(longest + 1), ...loop.slice(0, longest + 1), middle];
}

function moved(a: GridPoint, b: GridPoint, distance: number): Side {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [nx, ny] = [(-(b.y - a.y) / length) * distance, ((b.x - a.x) / length) * distance];
  return [
    { x: a.x + nx, y: a.y + ny },
    { x: b.x + nx, y: b.y + ny },
  ];
}

/** Whether the moved sides part at the corner. */
function isOuter([a, b]: Side, [c, d]: Side, distance: number): boolean {
  return ((b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x)) * distance <= 0;
}

/** How a parallel line goes round a corner. */
interface Bridging {
  /** From the line, grid steps; to its left where above 0. */
  readonly distance: number;
  readonly join: Join;
  /** Largest deviation of rounded corners, grid steps. */
  readonly arcTolerance: number;
}

/** From where one side ends to where the next begins, round a corner's outer side; both ends with it. */
function bridgeOver(corner: GridPoint, [from, to]: Side, { distance, join, arcTolerance }: Bridging): GridPoint[] {
  const [ax, ay, bx, by] = [from.x - corner.x, from.y - corner.y, to.x - corner.x, to.y - corner.y];
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  const miter = 1 / Math.cos(turn / 2);
  if (join === "miter" && miter <= MITER_LIMIT) {
    const share = 1 / (1 + Math.cos(turn));
    return [from, { x: corner.x + share * (ax + bx), y: corner.y + share * (ay + by) }, to];
  }
  const count = join === "miter" ? 1 : chordCount(Math.abs(distance), turn, arcTolerance);
  const start = Math.atan2(ay, ax);
  return Array.from({ length: count + 1 }, (_, i) => {
    if (i === 0) return from;
    if (i === count) return to;
    const angle = start + (turn * i) / count;
    return { x: corner.x + Math.abs(distance) * Math.cos(angle), y: corner.y + Math.abs(distance) * Math.sin(angle) };
  });
}

interface Meeting {
  /** How many of the sides that are done go, and how many of those to come. */
  readonly back: number;
  readonly ahead: number;
  readonly at: GridPoint;
}

/** Where the sides before an inner corner meet those behind it, with the fewest of them lost. */
function trim(done: readonly Side[], sides: readonly Side[], i: number, reach: number): Meeting | undefined {
  const within = (list: readonly Side[], from: number, step: number) => {
    let [count, length] = [0, 0];
    for (let k = from; k >= 0 && k < list.length && count <= MOST_TRIMMED && length <= reach; k += step) {
      length += Math.hypot(list[k][1].x - list[k][0].x, list[k][1].y - list[k][0].y);
      count++;
    }
    return count;
  };
  const [backs, aheads] = [within(done, done.length - 1, -1), within(sides, i, 1)];
  for (let lost = 0; lost <= backs + aheads - 2; lost++) {
    for (let back = Math.max(0, lost - aheads + 1); back <= Math.min(lost, backs - 1); back++) {
      const at = meet(done[done.length - 1 - back], sides[i + lost - back]);
      if (at !== undefined) return { back, ahead: lost - back, at };
    }
  }
  return undefined;
}

function meet([a, b]: Side, [c, d]: Side): GridPoint | undefined {
  const [rx, ry, sx, sy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const cross = rx * sy - ry * sx;
  if (cross === 0) return undefined;
  const t = ((c.x - a.x) * sy - (c.y - a.y) * sx) / cross;
  const s = ((c.x - a.x) * ry - (c.y - a.y) * rx) / cross;
  if (t < 0 || t > 1 || s < 0 || s > 1) return undefined;
  return { x: a.x + t * rx, y: a.y + t * ry };
}

/** The sides' ends on the grid, each once. */
function vertices(sides: readonly Side[], closed: boolean): GridPath {
  const path: GridPath = [];
  for (const { x, y } of [sides[0][0], ...sides.map(([, to]) => to)]) {
    const point = { x: Math.round(x), y: Math.round(y) };
    const last = path.at(-1);
    if (last === undefined || last.x !== point.x || last.y !== point.y) path.push(point);
  }
  return closed ? path.slice(0, -1) : path;
}
