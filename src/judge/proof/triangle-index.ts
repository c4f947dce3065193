/**
 * What a height map comes to over a place: its flat triangles sorted into cells, so that a place asks the few of one cell.
 */
import type { Point3 } from "../../base/math/point.js";
import type { Heights } from "./height-index.js";

/** Triangles to a cell, and the most cells either way (chosen: sorting costs as much as all that is asked). */
const TO_A_CELL = 2;
const MOST_CELLS = 1024;

/** Entries to a triangle in all cells together, at most (chosen). */
const MOST_ENTRIES = 12;

/** Finds heights over places. */
export class TriangleIndex {
  /** From u to u and from v to v, mm. */
  readonly box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
  readonly #points: readonly Point3[];
  readonly #triangles: ArrayLike<number>;
  #across: number;
  #up: number;
  /** Where the triangles of each cell begin, with one more at the end. */
  readonly #start: Int32Array;
  readonly #inCells: Int32Array;

  /** @param triangles three points each */
  constructor(points: readonly Point3[], triangles: ArrayLike<number>) {
    this.#points = points;
    this.#triangles = triangles;
    const { box } = this;
    for (const [u, v] of points) {
      box.left = Math.min(box.left, u);
      box.right = Math.max(box.right, u);
      box.low = Math.min(box.low, v);
      box.high = Math.max(box.high, v);
    }
    const [width, height] = [box.right - box.left, box.high - box.low];
    const cells = triangles.length / 3 / TO_A_CELL;
    const many = (share: number) => Math.max(1, Math.min(MOST_CELLS, Math.round(Math.sqrt(cells * share) || 1)));
    this.#across = many(width / height);
    this.#up = many(height / width);
    const spans = this.#spans();
    this.#start = new Int32Array(this.#across * this.#up + 1);
    this.#inCells = this.#fillCells(spans);
  }

  /** The heights over a place; undefined where no triangle lies. */
  at(u: number, v: number): Heights | undefined {
    const { left, right, low, high } = this.box;
    if (!(u >= left && u <= right && v >= low && v <= high)) return undefined;
    const cell = this.#row(v) * this.#across + this.#column(u);
    for (let i = this.#start[cell]; i < this.#start[cell + 1]; i++) {
      const first = 3 * this.#inCells[i];
      if (this.#holds(first, u, v)) return this.#onPlane(first, u, v);
    }
    return undefined;
  }

  #column(u: number): number {
    const { left, right } = this.box;
    return Math.max(0, Math.min(this.#across - 1, Math.floor(((u - left) / (right - left)) * this.#across)));
  }

  #row(v: number): number {
    const { low, high } = this.box;
    return Math.max(0, Math.min(this.#up - 1, Math.floor(((v - low) / (high - low)) * this.#up)));
  }

  /** By counting the sides to the right of the place, as polygons are asked: a side belongs to one of its two triangles. */
  #holds(first: number, u: number, v: number): boolean {
    let inside = false;
    for (let k = 0; k < 3; k++) {
      const a = this.#points[this.#triangles[first + k]];
      const b = this.#points[this.#triangles[first + (k === 2 ? 0 : k + 1)]];
      if (a[1] > v === b[1] > v) continue;
      if (a[0] + ((v - a[1]) / (b[1] - a[1])) * (b[0] - a[0]) > u) inside = !inside;
    }
    return inside;
  }

  #onPlane(first: number, u: number, v: number): Heights {
    const a = this.#points[this.#triangles[first]];
    const b = this.#points[this.#triangles[first + 1]];
    const c = this.#points[this.#triangles[first + 2]];
    const area = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    const toB = ((u - a[0]) * (c[1] - a[1]) - (v - a[1]) * (c[0] - a[0])) / area;
    const toC = ((b[0] - a[0]) * (v - a[1]) - (b[1] - a[1]) * (u - a[0])) / area;
    const h = a[2] + toB * (b[2] - a[2]) + toC * (c[2] - a[2]);
    return { low: h, high: h };
  }

  /** Of each triangle the first and the last column and row of the box round it, of coarser cells where most are wide. */
  #spans(): Int16Array {
    const count = this.#triangles.length / 3;
    const spans = new Int16Array(4 * count);
    for (;;) {
      let entries = 0;
      for (let i = 0; i < count; i++) {
        const a = this.#points[this.#triangles[3 * i]];
        const b = this.#points[this.#triangles[3 * i + 1]];
        const c = this.#points[this.#triangles[3 * i + 2]];
        const left = this.#column(Math.min(a[0], b[0], c[0]));
        const right = this.#column(Math.max(a[0], b[0], c[0]));
        const low = this.#row(Math.min(a[1], b[1], c[1]));
        const high = this.#row(Math.max(a[1], b[1], c[1]));
        spans[4 * i] = left;
        spans[4 * i + 1] = right;
        spans[4 * i + 2] = low;
        spans[4 * i + 3] = high;
        entries += (right - left + 1) * (high - low + 1);
      }
      const isCoarsest = this.#across === 1 && this.#up === 1;
      if (entries <= MOST_ENTRIES * count || isCoarsest) return spans;
      this.#across = Math.ceil(this.#across / 2);
      this.#up = Math.ceil(this.#up / 2);
    }
  }

  /** Triangles by the cells that their boxes reach into, cell after cell. */
  #fillCells(spans: Int16Array): Int32Array {
    const start = this.#start;
    const eachCell = (take: (cell: number, triangle: number) => void) => {
      for (let i = 0; 4 * i < spans.length; i++) {
        for (let row = spans[4 * i + 2]; row <= spans[4 * i + 3]; row++) {
          for (let column = spans[4 * i]; column <= spans[4 * i + 1]; column++) take(row * this.#across + column, i);
        }
      }
    };
    eachCell((cell) => {
      start[cell + 1]++;
    });
    for (let cell = 0; cell + 1 < start.length; cell++) start[cell + 1] += start[cell];
    const next = start.slice();
    const list = new Int32Array(start[start.length - 1]);
    eachCell((cell, triangle) => {
      list[next[cell]++] = triangle;
    });
    return list;
  }
}
