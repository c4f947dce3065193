/**
 * Tidies a united mesh, closed or cut open at planes of symmetry: edges too short for a float32 file are collapsed, triangles without height are flipped away.
 *
 * An edge may be collapsed when its two ends have exactly the two neighbours in common that its triangles give them
 * (the link condition: Dey, Edelsbrunner, Guha, Nekhayev, Topology preserving edge contraction, 1999; from memory), so
 * the surface stays what it is. Nothing moves by more than the short edge's length. A mesh cut open is tidied as what its
 * mirror images make of it: what lies on a plane stays on it, and no other edge than the rim's joins two of its points.
 *
 * An edge over 0.2 µm is collapsed only where no face moves by more than 0.1 µm: otherwise thousands of them add up to
 * 1e-5 of the volume, and the roads differ.
 */
import { vec3 } from "gl-matrix";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import type { Clipped } from "../mesh/clip.js";
import type { Mesh } from "../mesh/mesh.js";
import { CrossingWatch } from "./crossing-watch.js";

/** Edges up to this are collapsed, mm: a thousand steps of float32 at 16 mm from the axis, a fifth of any tolerance. */
const SHORT_EDGE = 2e-3;

/**
 * An edge longer than this, mm, is only collapsed where no face moves by more than a half of it: along a crease or in a plane.
 * Else a thousand such edges in a row, cut by facets of two parts, would add up to a part in 100 000 of the volume.
 */
const ALWAYS_SHORT = 2e-4;
const FACES_MOVE = ALWAYS_SHORT / 2;

/** Triangles lower than this are flipped away and points this near are one, mm: about a step of float32 on a ring. */
const FLAT_HEIGHT = 1e-6;

/**
 * An edge longer than this, mm, is not collapsed where faces would then cross others that they did not cross: beside a seam of
 * two parts the move of one face by 0.1 µm is enough. Shorter ones are, as a file may make them one point.
 */
const MAY_CROSS = 1e-5;

/** Triangles lower than this have no height at all, mm: what double precision leaves of one on a ring. */
const NO_HEIGHT = 1e-12;

/** Passes after which what is left is left to the gate: each pass lets neighbours of the last one's changes settle. */
const MAX_PASSES = 8;

/** Edges and triangles that are looked at between two places where the work may be interrupted: under a millisecond. */
const AT_ONCE = 64;

/** Tidies a closed mesh. */
export function tidyMesh(mesh: Mesh): Mesh {
  return finish(tidyingMesh(mesh));
}

/** The same in pieces. */
export function* tidyingMesh(mesh: Mesh): Pausing<Mesh> {
  return (yield* tidyingOpen({ mesh, marks: new Uint8Array(mesh.positions.length / 3) })).mesh;
}

/** Tidies a mesh that is open at planes, in pieces; its marks say, a bit for each plane, which vertices lie on them. */
export function* tidyingOpen({ mesh, marks }: Clipped): Pausing<Clipped> {
  const work = new Work(mesh, marks);
  for (let pass = 1; pass <= MAX_PASSES; pass++) {
    yield undefined;
    if ((yield* work.collapseShort()) + (yield* work.flipFlat()) === 0) break;
  }
  yield undefined;
  work.flipCollapsed();
  yield undefined;
  return work.result();
}

class Work {
  readonly #positions: Float64Array;
  readonly #triangles: Uint32Array;
  /** 1 where a triangle is gone. */
  readonly #gone: Uint8Array;
  /** Triangles of each vertex, filled for the vertices that are touched. */
  readonly #around: (number[] | undefined)[];
  readonly #starts: Uint32Array;
  readonly #entries: Uint32Array;
  /** Bits of the planes on which each vertex lies. */
  readonly #marks: Uint8Array;
  readonly #watch: CrossingWatch;

  constructor(mesh: Mesh, marks: Uint8Array) {
    this.#marks = marks;
    this.#positions = mesh.positions;
    this.#triangles = mesh.triangles.slice();
    this.#gone = new Uint8Array(mesh.triangles.length / 3);
    this.#around = new Array(mesh.positions.length / 3);
    [this.#starts, this.#entries] = incidence(mesh);
    this.#watch = new CrossingWatch({ positions: this.#positions, triangles: this.#triangles }, this.#gone);
  }

  *collapseShort(): Pausing<number> {
    const short: { a: number; b: number; length: number }[] = [];
    for (let t = 0; t < this.#gone.length; t++) {
      if (this.#gone[t] === 1) continue;
      for (let k = 0; k < 3; k++) {
        const a = this.#triangles[3 * t + k];
        const b = this.#triangles[3 * t + ((k + 1) % 3)];
        // Each edge once; a rim's has one triangle on this side of its plane, and one direction with it.
        if (a >= b && (this.#marks[a] & this.#marks[b]) === 0) continue;
        const square = this.#squareDistance(a, b);
        if (square <= SHORT_EDGE ** 2) short.push({ a, b, length: Math.sqrt(square) });
      }
    }
    short.sort((p, q) => p.length - q.length || p.a - q.a || p.b - q.b);
    let collapsed = 0;
    for (const [i, { a, b }] of short.entries()) {
      if (i % AT_ONCE === 0) yield BREATH;
      if (this.#collapse(a, b) || this.#collapse(b, a)) collapsed++;
    }
    return collapsed;
  }

  /** How many flat triangles were flipped away. */
  *flipFlat(): Pausing<number> {
    let flipped = 0;
    for (let t = 0; t < this.#gone.length; t++) {
      if (t % (AT_ONCE * AT_ONCE) === 0) yield BREATH;
      if (this.#gone[t] === 0 && this.#isLow(t, FLAT_HEIGHT) && this.#flip(t)) flipped++;
    }
    return flipped;
  }

  /**
   * Flips triangles of no height into neighbours that have some, as long as they become fewer: a row of them, which a
   * straight wall of many points leaves, is mended from its ends.
   */
  flipCollapsed(): void {
    const collapsed = (t: number) => this.#gone[t] === 0 && this.#isLow(t, NO_HEIGHT);
    let left: number[] = [];
    for (let t = 0; t < this.#gone.length; t++) if (collapsed(t)) left.push(t);
    for (let fewest = Number.POSITIVE_INFINITY; left.length > 0 && left.length < fewest; ) {
      fewest = left.length;
      const touched = left.flatMap((t) => {
        const around = [...this.#corners(t)].flatMap((vertex) => this.#trianglesOf(vertex));
        return collapsed(t) && this.#flip(t, collapsed) ? around : [t];
      });
      left = [...new Set(touched)].filter(collapsed);
    }
  }

  /** The mesh without what is gone, and without vertices that nothing uses. */
  result(): Clipped {
    const slot = new Int32Array(this.#positions.length / 3).fill(-1);
    const positions = new Float64Array(this.#positions.length);
    const triangles = new Uint32Array(this.#triangles.length);
    const marks = new Uint8Array(slot.length);
    let [vertices, corners] = [0, 0];
    for (let t = 0; t < this.#gone.length; t++) {
      if (this.#gone[t] === 1) continue;
      for (let k = 0; k < 3; k++) {
        const vertex = this.#triangles[3 * t + k];
        if (slot[vertex] === -1) {
          slot[vertex] = vertices;
          marks[vertices] = this.#marks[vertex];
          for (let axis = 0; axis < 3; axis++) positions[3 * vertices + axis] = this.#positions[3 * vertex + axis];
          vertices++;
        }
        triangles[corners++] = slot[vertex];
      }
    }
    const mesh = { positions: positions.slice(0, 3 * vertices), triangles: triangles.slice(0, corners) };
    return { mesh, marks: marks.slice(0, vertices) };
  }

  /** Moves b to a, if the surface stays the same and no triangle turns over. */
  #collapse(a: number, b: number): boolean {
    const [aroundA, aroundB] = [this.#trianglesOf(a), this.#trianglesOf(b)];
    const dying = aroundB.filter((t) => this.#has(t, a));
    // A rim's edge has one triangle on this side of the plane and its image on the other.
    const onRim = dying.length === 1 && (this.#marks[a] & this.#marks[b]) !== 0;
    if ((dying.length !== 2 && !onRim) || (this.#marks[b] & ~this.#marks[a]) !== 0) return false;
    if (!onRim && (this.#marks[a] & this.#marks[b]) !== 0) return false;
    if (this.#squareDistance(a, b) > ALWAYS_SHORT ** 2 && aroundB.some((t) => this.#moves(t, b, a))) return false;
    const common = this.#commonNeighbours(a, b);
    if (common.length === 3 && this.#squareDistance(a, b) <= FLAT_HEIGHT ** 2) {
      const tip = common.find((vertex) => this.#trianglesOf(vertex).length === 3);
      return tip !== undefined && this.#dropTip(tip, a, b) && this.#collapse(a, b);
    }
    if (common.length !== dying.length || this.#joinsPlane(a, b, common)) return false;
    // Where the two common neighbours face both ends, all that is left is a tetrahedron, which would fold flat.
    const facesBoth = (list: readonly number[]) =>
      list.some((t) => !dying.includes(t) && common.every((vertex) => this.#has(t, vertex)));
    if (!onRim && facesBoth(aroundA) && facesBoth(aroundB)) return false;
    const moving = aroundB.filter((t) => !dying.includes(t));
    if (moving.some((t) => this.#turnsOver(t, b, a))) return false;
    if (!this.#replace(a, b, dying, moving)) return false;
    this.#around[a] = [...aroundA.filter((t) => !dying.includes(t)), ...moving];
    this.#around[b] = [];
    for (const vertex of common) this.#around[vertex] = this.#trianglesOf(vertex).filter((t) => !dying.includes(t));
    return true;
  }

  /** Gives the triangles of b that stay the corner a, unless they then cross more others than before; false where so. */
  #replace(a: number, b: number, dying: readonly number[], moving: readonly number[]): boolean {
    const put = (from: number, to: number, gone: 0 | 1) => {
      for (const t of dying) this.#gone[t] = gone;
      for (const t of moving) this.#triangles[this.#cornerOf(t, from)] = to;
    };
    put(b, a, 1);
    if (this.#squareDistance(a, b) <= MAY_CROSS ** 2) return true;
    const after = this.#watch.count(moving);
    if (after === 0) return true;
    put(a, b, 0);
    if (after > this.#watch.count([...dying, ...moving])) return false;
    put(b, a, 1);
    return true;
  }

  /** Whether moving b to a would join a and another point of one of its planes by an edge that they had not. */
  #joinsPlane(a: number, b: number, common: readonly number[]): boolean {
    const gained = this.#marks[a] & ~this.#marks[b];
    if (gained === 0) return false;
    return this.#trianglesOf(b).some((t) =>
      this.#corners(t).some((v) => v !== a && v !== b && !common.includes(v) && (this.#marks[v] & gained) !== 0),
    );
  }

  #commonNeighbours(a: number, b: number): number[] {
    const beside = this.#neighbours(a);
    return this.#neighbours(b).filter((vertex) => vertex !== a && beside.includes(vertex));
  }

  #neighbours(vertex: number): number[] {
    const found: number[] = [];
    for (const t of this.#trianglesOf(vertex)) {
      for (let k = 3 * t; k < 3 * t + 3; k++) {
        const corner = this.#triangles[k];
        if (corner !== vertex && !found.includes(corner)) found.push(corner);
      }
    }
    return found;
  }

  /**
   * Takes away a vertex whose only neighbours are a, b and one other, with one triangle for its three. Where a and b
   * coincide it is the tip of a fin without thickness, which keeps them from being one vertex.
   */
  #dropTip(tip: number, a: number, b: number): boolean {
    const [kept, ...dying] = this.#trianglesOf(tip);
    const ring = new Set([kept, ...dying].flatMap((t) => [...this.#corners(t)]));
    ring.delete(tip);
    const [other] = [...ring].filter((vertex) => vertex !== a && vertex !== b);
    if (ring.size !== 3 || !ring.has(a) || !ring.has(b)) return false;
    const closes = (t: number) => t !== kept && !dying.includes(t) && [a, b].every((v) => this.#corners(t).includes(v));
    if (this.#trianglesOf(other).some(closes)) return false;
    const missing = [...ring].find((vertex) => !this.#corners(kept).includes(vertex)) as number;
    this.#triangles[3 * kept + this.#corners(kept).indexOf(tip)] = missing;
    for (const t of dying) this.#gone[t] = 1;
    this.#around[tip] = [];
    for (const vertex of ring) {
      const rest = this.#trianglesOf(vertex).filter((t) => t !== kept && !dying.includes(t));
      this.#around[vertex] = [...rest, kept];
    }
    return true;
  }

  /**
   * Swaps the longest side of a flat triangle for the other diagonal of the two triangles on it.
   *
   * @param avoids other triangles with which it is not done
   */
  #flip(t: number, avoids: (other: number) => boolean = () => false): boolean {
    const corners = [...this.#corners(t)];
    const lengths = corners.map((vertex, k) => this.#squareDistance(vertex, corners[(k + 1) % 3]));
    const side = lengths.indexOf(Math.max(...lengths));
    const [a, b, c] = [corners[side], corners[(side + 1) % 3], corners[(side + 2) % 3]];
    const other = this.#trianglesOf(a).find((s) => s !== t && this.#corners(s).includes(b));
    if (other === undefined || avoids(other)) return false;
    const d = [...this.#corners(other)].find((vertex) => vertex !== a && vertex !== b) as number;
    if (
      d === c ||
      (this.#marks[c] & this.#marks[d]) !== 0 ||
      this.#trianglesOf(c).some((s) => this.#corners(s).includes(d))
    )
      return false;
    const normal = this.#normal(a, d, b);
    const sound = (p: number, q: number, r: number) => vec3.dot(this.#normal(p, q, r), normal) > 0;
    if (!sound(a, d, c) || !sound(d, b, c)) return false;
    this.#triangles.set([a, d, c], 3 * t);
    this.#triangles.set([d, b, c], 3 * other);
    this.#around[a] = this.#trianglesOf(a).filter((s) => s !== other);
    this.#around[b] = this.#trianglesOf(b).filter((s) => s !== t);
    this.#around[c] = [...this.#trianglesOf(c), other];
    this.#around[d] = [...this.#trianglesOf(d), t];
    return true;
  }

  /** Whether a triangle that has an area turns against itself when one corner moves. */
  #turnsOver(t: number, from: number, to: number): boolean {
    if (this.#isLow(t, SHORT_EDGE)) return false;
    const a = this.#triangles[3 * t];
    const b = this.#triangles[3 * t + 1];
    const c = this.#triangles[3 * t + 2];
    const moved = this.#normal(a === from ? to : a, b === from ? to : b, c === from ? to : c);
    return vec3.dot(this.#normal(a, b, c), moved) <= 0;
  }

  /** Whether a triangle that has an area leaves its plane when one corner moves. */
  #moves(t: number, from: number, to: number): boolean {
    if (this.#isLow(t, ALWAYS_SHORT)) return false;
    const normal = this.#normal(this.#triangles[3 * t], this.#triangles[3 * t + 1], this.#triangles[3 * t + 2]);
    const p = this.#positions;
    const x = p[3 * to] - p[3 * from];
    const y = p[3 * to + 1] - p[3 * from + 1];
    const z = p[3 * to + 2] - p[3 * from + 2];
    const away = normal[0] * x + normal[1] * y + normal[2] * z;
    return away ** 2 > FACES_MOVE ** 2 * vec3.dot(normal, normal);
  }

  #trianglesOf(vertex: number): number[] {
    const known = this.#around[vertex];
    if (known !== undefined) return known;
    const list: number[] = [];
    for (let i = this.#starts[vertex]; i < this.#starts[vertex + 1]; i++) list.push(this.#entries[i]);
    this.#around[vertex] = list;
    return list;
  }

  #corners(t: number): Uint32Array {
    return this.#triangles.subarray(3 * t, 3 * t + 3);
  }

  /** Whether a vertex is a corner of a triangle. */
  #has(t: number, vertex: number): boolean {
    const at = 3 * t;
    return this.#triangles[at] === vertex || this.#triangles[at + 1] === vertex || this.#triangles[at + 2] === vertex;
  }

  /** Where a corner of a triangle stands among all corners. */
  #cornerOf(t: number, vertex: number): number {
    const at = 3 * t;
    if (this.#triangles[at] === vertex) return at;
    return this.#triangles[at + 1] === vertex ? at + 1 : at + 2;
  }

  #squareDistance(a: number, b: number): number {
    const p = this.#positions;
    const x = p[3 * a] - p[3 * b];
    const y = p[3 * a + 1] - p[3 * b + 1];
    const z = p[3 * a + 2] - p[3 * b + 2];
    return x * x + y * y + z * z;
  }

  #normal(a: number, b: number, c: number): [number, number, number] {
    const p = this.#positions;
    const ux = p[3 * b] - p[3 * a];
    const uy = p[3 * b + 1] - p[3 * a + 1];
    const uz = p[3 * b + 2] - p[3 * a + 2];
    const vx = p[3 * c] - p[3 * a];
    const vy = p[3 * c + 1] - p[3 * a + 1];
    const vz = p[3 * c + 2] - p[3 * a + 2];
    return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  }

  /** Whether the smallest height of a triangle is no more than so many mm. A number would be put on the heap for each. */
  #isLow(t: number, height: number): boolean {
    const p = this.#positions;
    const a = 3 * this.#triangles[3 * t];
    const b = 3 * this.#triangles[3 * t + 1];
    const c = 3 * this.#triangles[3 * t + 2];
    const ux = p[b] - p[a];
    const uy = p[b + 1] - p[a + 1];
    const uz = p[b + 2] - p[a + 2];
    const vx = p[c] - p[a];
    const vy = p[c + 1] - p[a + 1];
    const vz = p[c + 2] - p[a + 2];
    const wx = p[b] - p[c];
    const wy = p[b + 1] - p[c + 1];
    const wz = p[b + 2] - p[c + 2];
    const longest = Math.max(ux * ux + uy * uy + uz * uz, wx * wx + wy * wy + wz * wz, vx * vx + vy * vy + vz * vz);
    if (longest === 0) return true;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    return Math.sqrt((nx * nx + ny * ny + nz * nz) / longest) <= height;
  }
}

/** Triangles of each vertex, one list after the other. */
function incidence({ positions, triangles }: Mesh): [starts: Uint32Array, entries: Uint32Array] {
  const starts = new Uint32Array(positions.length / 3 + 1);
  for (let i = 0; i < triangles.length; i++) starts[triangles[i] + 1]++;
  for (let i = 1; i < starts.length; i++) starts[i] += starts[i - 1];
  const next = starts.slice();
  const entries = new Uint32Array(triangles.length);
  for (let t = 0, i = 0; i < triangles.length; t++) {
    for (const end = i + 3; i < end; i++) entries[next[triangles[i]]++] = t;
  }
  return [starts, entries];
}
