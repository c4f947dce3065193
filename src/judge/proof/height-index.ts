/**
 * What a flat body comes to over a place: looked up in its polygons, each vertex of which has its height, by counting the
 * sides to the right of the place.
 *
 * Between two contours the height is taken by the distances to both: exact where they run side by side. At corners the
 * body's own triangles may lie elsewhere between them, so a share of the step is left open.
 */
import type { Point3 } from "../../base/math/point.js";

/** From how high at least to how high at most, mm. */
export interface Heights {
  readonly low: number;
  readonly high: number;
}

/** A polygon: rings of points (u, v, h), mm. */
type Polygon = readonly (readonly Point3[])[];

/** Share of the step between two contours by which a height may be off its interpolation (chosen). */
const OPEN_SHARE = 0.25;

/** Sides to a row, and the most rows: looking up costs the sides of one row (chosen). */
const SIDES_A_ROW = 6;
const MOST_ROWS = 512;

/** Numbers that a side takes. */
const SIDE = 6;

/** Finds heights over places. */
export class HeightIndex {
  /** From u to u and from v to v, mm; empty where there are no polygons. */
  readonly box = { left: Infinity, right: -Infinity, low: Infinity, high: -Infinity };
  /** Whether u and v change places in the sides: rows lie across the longer way, so that each has few sides. */
  readonly #turned: boolean;
  /** Of each side: u, v, h of its start, then of its end. */
  readonly #sides: Float64Array;
  /** Number of each side's polygon. */
  readonly #of: Int32Array;
  /** The first side of each polygon, with one more at the end. */
  readonly #first: Int32Array;
  /** The least and the greatest height of each polygon. */
  readonly #least: Float64Array;
  readonly #most: Float64Array;
  readonly #rowStart: Int32Array;
  readonly #rowSides: Int32Array;
  readonly #parity: Uint8Array;

  constructor(polygons: readonly Polygon[]) {
    let count = 0;
    for (const rings of polygons) {
      for (const ring of rings) {
        count += ring.length;
        for (const [u, v] of ring) this.#widen(u, v);
      }
    }
    const { left, right, low, high } = this.box;
    this.#turned = right - left > high - low;
    this.#sides = new Float64Array(SIDE * count);
    this.#of = new Int32Array(count);
    this.#first = new Int32Array(polygons.length + 1);
    this.#parity = new Uint8Array(polygons.length);
    this.#least = new Float64Array(polygons.length).fill(Infinity);
    this.#most = new Float64Array(polygons.length).fill(-Infinity);
    let side = 0;
    polygons.forEach((rings, number) => {
      this.#first[number] = side;
      for (const ring of rings) {
        let last = ring[ring.length - 1];
        for (const point of ring) {
          this.#put(SIDE * side, last);
          this.#put(SIDE * side + 3, point);
          this.#of[side++] = number;
          if (point[2] < this.#least[number]) this.#least[number] = point[2];
          if (point[2] > this.#most[number]) this.#most[number] = point[2];
          last = point;
        }
      }
    });
    this.#first[polygons.length] = side;
    const rows = Math.max(1, Math.min(MOST_ROWS, Math.ceil(count / SIDES_A_ROW)));
    this.#rowStart = new Int32Array(rows + 1);
    this.#rowSides = this.#fillRows();
  }

  #put(at: number, [u, v, h]: Point3): void {
    this.#sides[at] = this.#turned ? v : u;
    this.#sides[at + 1] = this.#turned ? u : v;
    this.#sides[at + 2] = h;
  }

  /** The heights over a place; undefined where no polygon lies. */
  at(u: number, v: number): Heights | undefined {
    const { left, right, low, high } = this.box;
    if (u < left || u > right || v < low || v > high) return undefined;
    return this.#turned ? this.#look(v, u) : this.#look(u, v);
  }

  /** The same of a place told as sides are. */
  #look(u: number, v: number): Heights | undefined {
    const sides = this.#sides;
    const row = this.#rowOf(v);
    const [from, to] = [this.#rowStart[row], this.#rowStart[row + 1]];
    for (let i = from; i < to; i++) {
      const s = SIDE * this.#rowSides[i];
      const av = sides[s + 1];
      const bv = sides[s + 4];
      if (av > v === bv > v) continue;
      const x = sides[s] + ((v - av) / (bv - av)) * (sides[s + 3] - sides[s]);
      if (x > u) this.#parity[this.#of[this.#rowSides[i]]] ^= 1;
    }
    let found = -1;
    for (let i = from; i < to; i++) {
      const polygon = this.#of[this.#rowSides[i]];
      if (this.#parity[polygon] === 1) found = polygon;
      this.#parity[polygon] = 0;
    }
    return found === -1 ? undefined : this.#between(found, u, v);
  }

  /** Heights within a polygon: of one triangle by its plane, of others by the distances to the contours of either height. */
  #between(polygon: number, u: number, v: number): Heights {
    const least = this.#least[polygon];
    const most = this.#most[polygon];
    if (least === most) return { low: least, high: most };
    const from = this.#first[polygon];
    const to = this.#first[polygon + 1];
    if (to - from === 3) return this.#onPlane(from, u, v);
    const sides = this.#sides;
    let toLeast = Infinity;
    let toMost = Infinity;
    for (let s = SIDE * from; s < SIDE * to; s += SIDE) {
      const h = sides[s + 2];
      if (h !== sides[s + 5] || (h !== least && h !== most)) continue;
      const du = sides[s + 3] - sides[s];
      const dv = sides[s + 4] - sides[s + 1];
      const pu = u - sides[s];
      const pv = v - sides[s + 1];
      const square = du * du + dv * dv;
      const t = square === 0 ? 0 : Math.min(1, Math.max(0, (pu * du + pv * dv) / square));
      const away = (pu - t * du) ** 2 + (pv - t * dv) ** 2;
      if (h === least) toLeast = Math.min(toLeast, away);
      else toMost = Math.min(toMost, away);
    }
    if (toLeast === Infinity || toMost === Infinity) return { low: least, high: most };
    const [a, b] = [Math.sqrt(toLeast), Math.sqrt(toMost)];
    const h = a + b === 0 ? (least + most) / 2 : (least * b + most * a) / (a + b);
    const open = OPEN_SHARE * (most - least);
    return { low: Math.max(least, h - open), high: Math.min(most, h + open) };
  }

  #onPlane(first: number, u: number, v: number): Heights {
    const at = (i: number, k: number) => this.#sides[SIDE * (first + i) + 3 + k];
    const [au, av, ah] = [at(0, 0), at(0, 1), at(0, 2)];
    const [bu, bv] = [at(1, 0) - au, at(1, 1) - av];
    const [cu, cv] = [at(2, 0) - au, at(2, 1) - av];
    const [pu, pv] = [u - au, v - av];
    const area = bu * cv - bv * cu;
    const [b, c] = [(pu * cv - pv * cu) / area, (bu * pv - bv * pu) / area];
    const h = ah + b * (at(1, 2) - ah) + c * (at(2, 2) - ah);
    return { low: h, high: h };
  }

  #widen(u: number, v: number): void {
    const { box } = this;
    box.left = Math.min(box.left, u);
    box.right = Math.max(box.right, u);
    box.low = Math.min(box.low, v);
    box.high = Math.max(box.high, v);
  }

  #rowOf(v: number): number {
    const { left, right, low, high } = this.box;
    const [from, to] = this.#turned ? [left, right] : [low, high];
    const rows = this.#rowStart.length - 1;
    return Math.max(0, Math.min(rows - 1, Math.floor(((v - from) / (to - from)) * rows)));
  }

  /** Sides by the rows that they reach into, row after row. */
  #fillRows(): Int32Array {
    const sides = this.#sides;
    const start = this.#rowStart;
    const count = this.#of.length;
    const rows = new Int32Array(2 * count);
    for (let side = 0; side < count; side++) {
      const a = this.#rowOf(sides[SIDE * side + 1]);
      const b = this.#rowOf(sides[SIDE * side + 4]);
      rows[2 * side] = Math.min(a, b);
      rows[2 * side + 1] = Math.max(a, b);
      for (let row = rows[2 * side]; row <= rows[2 * side + 1]; row++) start[row + 1]++;
    }
    for (let row = 0; row + 1 < start.length; row++) start[row + 1] += start[row];
    const next = start.slice();
    const list = new Int32Array(start[start.length - 1]);
    for (let side = 0; side < count; side++) {
      for (let row = rows[2 * side]; row <= rows[2 * side + 1]; row++) list[next[row]++] = side;
    }
    return list;
  }
}
