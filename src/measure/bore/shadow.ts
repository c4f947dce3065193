/**
 * The shadow of a mesh on a plane, on a grid: which cells it touches, and where the middles of the holes in it lie.
 *
 * The grid tells lobes of one hole apart to about 2 %.
 */
import type { Point2 } from "../../base/math/point.js";

/** Cells along the longer side of the shadow. A hole of fewer than about four is not seen. */
const CELLS = 400;

/** Free cells round the shadow, from which what is outside is told. */
const RIM = 2;

export interface Hollow {
  readonly middle: Point2;
  /** About how far the nearest metal is, mm. */
  readonly reach: number;
}

export interface Hollows {
  /** The roomiest place of each hole, roomiest first. */
  readonly hollows: readonly Hollow[];
  /** Side of a cell, mm. */
  readonly cell: number;
}

/**
 * @param points x, y of each vertex in the plane
 * @param triangles three vertices a triangle
 */
export function findHollows(points: Float64Array, triangles: Uint32Array): Hollows {
  const grid = makeGrid(points);
  for (let t = 0; t < triangles.length; t += 3) shade(grid, points, triangles[t], triangles[t + 1], triangles[t + 2]);
  floodOutside(grid);
  return { hollows: middles(grid), cell: grid.cell };
}

/** What is in a cell: nothing is known to be, metal, or the air outside. */
const [EMPTY, METAL, OUTSIDE] = [0, 1, 2] as const;

interface Grid {
  readonly cells: Uint8Array;
  readonly width: number;
  readonly height: number;
  /** mm */
  readonly cell: number;
  readonly left: number;
  readonly bottom: number;
}

function makeGrid(points: Float64Array): Grid {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]);
    right = Math.max(right, points[i]);
    bottom = Math.min(bottom, points[i + 1]);
    top = Math.max(top, points[i + 1]);
  }
  const cell = Math.max(right - left, top - bottom) / CELLS || 1;
  const cellsIn = (length: number) => Math.floor(length / cell) + 1 + 2 * RIM;
  const [width, height] = [cellsIn(right - left), cellsIn(top - bottom)];
  const cells = new Uint8Array(width * height);
  return { cells, width, height, cell, left: left - RIM * cell, bottom: bottom - RIM * cell };
}

/** Marks every cell that the triangle touches: row by row, from its leftmost point in the row to its rightmost. */
function shade(
  { cells, width, cell, left, bottom }: Grid,
  points: Float64Array,
  a: number,
  b: number,
  c: number,
): void {
  const ax = (points[2 * a] - left) / cell;
  const ay = (points[2 * a + 1] - bottom) / cell;
  const bx = (points[2 * b] - left) / cell;
  const by = (points[2 * b + 1] - bottom) / cell;
  const cx = (points[2 * c] - left) / cell;
  const cy = (points[2 * c + 1] - bottom) / cell;
  const first = Math.floor(Math.min(ay, by, cy));
  const last = Math.floor(Math.max(ay, by, cy));
  if (first === last) {
    const to = first * width + Math.floor(Math.max(ax, bx, cx));
    for (let i = first * width + Math.floor(Math.min(ax, bx, cx)); i <= to; i++) cells[i] = METAL;
    return;
  }
  for (let row = first; row <= last; row++) {
    span[0] = Number.POSITIVE_INFINITY;
    span[1] = Number.NEGATIVE_INFINITY;
    widen(ax, ay, bx, by, row);
    widen(bx, by, cx, cy, row);
    widen(cx, cy, ax, ay, row);
    const to = row * width + Math.floor(span[1]);
    for (let i = row * width + Math.floor(span[0]); i <= to; i++) cells[i] = METAL;
  }
}

/** Leftmost and rightmost x of a triangle in a row: one pair for all, as there may be millions of triangles. */
const span = new Float64Array(2);

/** Widens the span by the part of a side that lies in the row. */
function widen(ax: number, ay: number, bx: number, by: number, row: number): void {
  if (Math.max(ay, by) < row || Math.min(ay, by) > row + 1) return;
  const at = (y: number) => (ay === by ? ax : ax + ((bx - ax) * (y - ay)) / (by - ay));
  const from = ay < row ? at(row) : ay > row + 1 ? at(row + 1) : ax;
  const to = by < row ? at(row) : by > row + 1 ? at(row + 1) : bx;
  span[0] = Math.min(span[0], from, to);
  span[1] = Math.max(span[1], from, to);
}

/** Marks what hangs together with the grid's border by sides of empty cells. */
function floodOutside({ cells, width }: Grid): void {
  const waiting = [0];
  cells[0] = OUTSIDE;
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const next of [at - 1, at + 1, at - width, at + width]) {
      if (next < 0 || next >= cells.length || cells[next] !== EMPTY) continue;
      cells[next] = OUTSIDE;
      waiting.push(next);
    }
  }
}

/** Steps to a neighbour by a side, a corner, a knight's move: G. Borgefors, Distance transformations in digital images, 1986. */
const [SIDE, CORNER, KNIGHT] = [5, 7, 11] as const;

/** The roomiest cell of each hole. */
function middles(grid: Grid): Hollow[] {
  const { cells, width, cell, left, bottom } = grid;
  const room = distances(grid);
  const holes = new Map<number, number>();
  const holeOf = labelHoles(grid);
  for (let at = 0; at < cells.length; at++) {
    if (cells[at] !== EMPTY) continue;
    const best = holes.get(holeOf[at]);
    if (best === undefined || room[at] > room[best]) holes.set(holeOf[at], at);
  }
  return [...holes.values()]
    .map(
      (at): Hollow => ({
        middle: [left + ((at % width) + 0.5) * cell, bottom + (Math.floor(at / width) + 0.5) * cell],
        reach: (room[at] / SIDE) * cell,
      }),
    )
    .sort((one, other) => other.reach - one.reach);
}

/** The number of each empty cell's hole. */
function labelHoles({ cells, width }: Grid): Int32Array {
  const holeOf = new Int32Array(cells.length).fill(-1);
  for (let first = 0; first < cells.length; first++) {
    if (cells[first] !== EMPTY || holeOf[first] !== -1) continue;
    holeOf[first] = first;
    const waiting = [first];
    for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
      for (const next of [at - 1, at + 1, at - width, at + width]) {
        if (cells[next] !== EMPTY || holeOf[next] !== -1) continue;
        holeOf[next] = first;
        waiting.push(next);
      }
    }
  }
  return holeOf;
}

/** About how far each empty cell is from metal, in fifths of a cell. */
function distances({ cells, width }: Grid): Float64Array {
  const room = Float64Array.from(cells, (content) => (content === EMPTY ? Number.POSITIVE_INFINITY : 0));
  const steps: readonly (readonly [offset: number, length: number])[] = [
    [-1, SIDE],
    [-width, SIDE],
    [-width - 1, CORNER],
    [-width + 1, CORNER],
    [-width - 2, KNIGHT],
    [-width + 2, KNIGHT],
    [-2 * width - 1, KNIGHT],
    [-2 * width + 1, KNIGHT],
  ];
  // Holes keep clear of the rim, so every step stays on the grid.
  for (const way of [1, -1] as const) {
    for (let i = 0; i < cells.length; i++) {
      const at = way === 1 ? i : cells.length - 1 - i;
      if (room[at] === 0) continue;
      for (const [offset, length] of steps) room[at] = Math.min(room[at], room[at + way * offset] + length);
    }
  }
  return room;
}
