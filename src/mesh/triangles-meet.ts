/**
 * Whether two triangles of a mesh meet where they share no corner and no side, with exact predicates: no rounding decides.
 *
 * Triangles in different planes meet where a side of one goes through the other; such in one plane where no side's line
 * parts them (two convex shapes are apart where a line along a side of one keeps them apart: H. Minkowski, 1910; from memory).
 */
import { sideOf } from "../base/math/side-of.js";
import { turnOf } from "../base/math/turn-of.js";
import type { Mesh } from "./mesh.js";

type Triple = readonly [number, number, number];

/**
 * Asks of pairs of triangles whether they cross, touch or lie over each other elsewhere than at corners and sides that they
 * share by index. A triangle without area meets nothing: that is a fault of its own.
 */
export class TrianglesMeet {
  readonly #p: Float64Array;
  readonly #triangles: Uint32Array;

  /** @param mesh sound: finite, indices in range */
  constructor({ positions, triangles }: Mesh) {
    this.#p = positions;
    this.#triangles = triangles;
  }

  /** @param s, t two different triangles */
  meet(s: number, t: number): boolean {
    const corners = this.#triangles;
    const a = corners[3 * s];
    const b = corners[3 * s + 1];
    const c = corners[3 * s + 2];
    const d = corners[3 * t];
    const e = corners[3 * t + 1];
    const f = corners[3 * t + 2];
    const hasA = a === d || a === e || a === f;
    const hasB = b === d || b === e || b === f;
    const hasC = c === d || c === e || c === f;
    const shared = Number(hasA) + Number(hasB) + Number(hasC);
    if (shared === 0) return this.#areApart(a, b, c, t) ? false : this.#apartByIndex([a, b, c], [d, e, f]);
    if (shared === 3) return this.#plane([a, b, c]) !== undefined;
    if (shared === 2) {
      const rest = d !== a && d !== b && d !== c ? d : e !== a && e !== b && e !== c ? e : f;
      if (sideOf(this.#p, a, b, c, rest) !== 0) return false;
      if (!hasC) return this.#foldsOver(a, b, c, rest);
      return hasA ? this.#foldsOver(c, a, b, rest) : this.#foldsOver(b, c, a, rest);
    }
    const [x, y] = hasA ? [b, c] : hasB ? [c, a] : [a, b];
    const u = sideOf(this.#p, d, e, f, x);
    const v = sideOf(this.#p, d, e, f, y);
    if ((u > 0 && v > 0) || (u < 0 && v < 0)) return false;
    const first: Triple = hasA ? [a, b, c] : hasB ? [b, c, a] : [c, a, b];
    const second: Triple = first[0] === d ? [d, e, f] : first[0] === e ? [e, f, d] : [f, d, e];
    return this.#hingedAtCorner(first, second);
  }

  /** Whether three points lie on one side of a triangle's plane. */
  #areApart(a: number, b: number, c: number, t: number): boolean {
    const p = this.#p;
    const d = this.#triangles[3 * t];
    const e = this.#triangles[3 * t + 1];
    const f = this.#triangles[3 * t + 2];
    const u = sideOf(p, d, e, f, a);
    if (u === 0) return false;
    const v = sideOf(p, d, e, f, b);
    return u > 0 ? v > 0 && sideOf(p, d, e, f, c) > 0 : v < 0 && sideOf(p, d, e, f, c) < 0;
  }

  /** Two triangles in one plane on the side from a to b, with the corners c and d: whether they lie over each other. */
  #foldsOver(a: number, b: number, c: number, d: number): boolean {
    const plane = this.#plane([a, b, c]) ?? this.#plane([a, b, d]);
    return plane !== undefined && this.#turn(plane, a, b, c) * this.#turn(plane, a, b, d) > 0;
  }

  /** Two triangles whose first corner is one: whether the opposite side of one meets the other. */
  #hingedAtCorner(s: Triple, t: Triple): boolean {
    const [, b, c] = s;
    const [, e, f] = t;
    const p = this.#p;
    const [sb, sc] = [sideOf(p, t[0], e, f, b), sideOf(p, t[0], e, f, c)];
    if ((sb > 0 && sc > 0) || (sb < 0 && sc < 0)) return false;
    const [se, sf] = [sideOf(p, s[0], b, c, e), sideOf(p, s[0], b, c, f)];
    if ((se > 0 && sf > 0) || (se < 0 && sf < 0)) return false;
    const [planeS, planeT] = [this.#plane(s), this.#plane(t)];
    if (planeS === undefined || planeT === undefined) return false;
    if (sb === 0 && sc === 0) return this.#segmentInPlane(planeT, b, c, t) || this.#segmentInPlane(planeS, e, f, s);
    return this.#goesThrough(b, c, t) || this.#goesThrough(e, f, s);
  }

  #apartByIndex(s: Triple, t: Triple): boolean {
    const ofS = this.#sides(t, s);
    if (ofS === undefined) return false;
    const ofT = this.#sides(s, t);
    if (ofT === undefined) return false;
    const [planeS, planeT] = [this.#plane(s), this.#plane(t)];
    if (planeS === undefined || planeT === undefined) return false;
    if (ofS.every((side) => side === 0)) return this.#overlap(planeS, s, t);
    const through = (one: Triple, other: Triple, sides: Triple, plane: number) =>
      [0, 1, 2].some((k) => {
        const next = (k + 1) % 3;
        if (sides[k] * sides[next] > 0) return false;
        if (sides[k] === 0 && sides[next] === 0) return this.#segmentInPlane(plane, one[k], one[next], other);
        return this.#piercesLine(one[k], one[next], other);
      });
    return through(s, t, ofS, planeT) || through(t, s, ofT, planeS);
  }

  /** Signs of the sides of one triangle's plane on which another's corners lie; undefined where all lie on the same one. */
  #sides([a, b, c]: Triple, [x, y, z]: Triple): Triple | undefined {
    const p = this.#p;
    const [sx, sy, sz] = [sideOf(p, a, b, c, x), sideOf(p, a, b, c, y), sideOf(p, a, b, c, z)];
    if ((sx > 0 && sy > 0 && sz > 0) || (sx < 0 && sy < 0 && sz < 0)) return undefined;
    return [Math.sign(sx), Math.sign(sy), Math.sign(sz)];
  }

  /** Whether a segment that is not in a triangle's plane meets the triangle. */
  #goesThrough(x: number, y: number, t: Triple): boolean {
    const [sx, sy] = [sideOf(this.#p, t[0], t[1], t[2], x), sideOf(this.#p, t[0], t[1], t[2], y)];
    if ((sx > 0 && sy > 0) || (sx < 0 && sy < 0)) return false;
    return this.#piercesLine(x, y, t);
  }

  /** Whether a line that is not in a triangle's plane meets the triangle. */
  #piercesLine(x: number, y: number, [a, b, c]: Triple): boolean {
    const p = this.#p;
    const [u, v, w] = [sideOf(p, x, y, a, b), sideOf(p, x, y, b, c), sideOf(p, x, y, c, a)];
    return !((u > 0 || v > 0 || w > 0) && (u < 0 || v < 0 || w < 0));
  }

  /** Whether a segment in a triangle's plane meets it. */
  #segmentInPlane(plane: number, x: number, y: number, t: Triple): boolean {
    return !this.#outside(plane, t, [x, y]) && !this.#besideLine(plane, x, y, t);
  }

  /** Whether two triangles in one plane meet. */
  #overlap(plane: number, s: Triple, t: Triple): boolean {
    return !this.#outside(plane, s, t) && !this.#outside(plane, t, s);
  }

  /** Whether all points lie beyond one of a triangle's sides. */
  #outside(plane: number, [a, b, c]: Triple, points: readonly number[]): boolean {
    const turn = Math.sign(this.#turn(plane, a, b, c));
    const beyond = (from: number, to: number) => points.every((x) => this.#turn(plane, from, to, x) * turn < 0);
    return beyond(a, b) || beyond(b, c) || beyond(c, a);
  }

  /** Whether a triangle lies wholly on one side of the line through x and y. */
  #besideLine(plane: number, x: number, y: number, [a, b, c]: Triple): boolean {
    const [u, v, w] = [this.#turn(plane, x, y, a), this.#turn(plane, x, y, b), this.#turn(plane, x, y, c)];
    return (u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0);
  }

  /** The coordinate that is left out so that a triangle keeps an area; undefined where it has none. */
  #plane([a, b, c]: Triple): number | undefined {
    for (let plane = 0; plane < 3; plane++) if (this.#turn(plane, a, b, c) !== 0) return plane;
    return undefined;
  }

  /** Which way three points turn, one coordinate left out. */
  #turn(plane: number, a: number, b: number, c: number): number {
    const p = this.#p;
    const i = plane === 0 ? 1 : 0;
    const j = plane === 2 ? 1 : 2;
    return turnOf(p[3 * a + i], p[3 * a + j], p[3 * b + i], p[3 * b + j], p[3 * c + i], p[3 * c + j]);
  }
}
