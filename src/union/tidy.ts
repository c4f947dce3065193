/**
 * Tidies a united mesh: edges too short for a float32 file are collapsed, triangles without height are flipped away.
 *
 * An edge may be collapsed when its two ends have exactly the two neighbours in common that its triangles give them
 * (the link condition: Dey, Edelsbrunner, Guha, Nekhayev, Topology preserving edge contraction, 1999; from memory), so
 * the surface stays what it is. Nothing moves by more than the short edge's length.
 */
import type { Mesh } from "../mesh/mesh.js";

/** Edges up to this are collapsed, mm: a thousand steps of float32 at 16 mm from the axis, a fifth of any tolerance. */
const SHORT_EDGE = 2e-3;

/** Triangles lower than this are flipped away and points this near are one, mm: about a step of float32 on a ring. */
const FLAT_HEIGHT = 1e-6;

/** Passes after which what is left is left to the gate: each pass lets neighbours of the last one's changes settle. */
const MAX_PASSES = 8;

/**
 * Flat triangles in a row, which a straight wall of many points leaves, are mended a few in a pass: as long as they become
 * fewer than ever, so many passes may follow.
 */
const MOST_PASSES = 64;

export function tidyMesh(mesh: Mesh): Mesh {
  const work = new Work(mesh);
  let fewest = Number.POSITIVE_INFINITY;
  for (let pass = 1; pass <= MOST_PASSES; pass++) {
    const collapsed = work.collapseShort();
    const { flat, flipped } = work.flipFlat();
    if (collapsed + flipped === 0 || (pass >= MAX_PASSES && flat >= fewest)) break;
    fewest = Math.min(fewest, flat);
  }
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

  constructor(mesh: Mesh) {
    this.#positions = mesh.positions;
    this.#triangles = mesh.triangles.slice();
    this.#gone = new Uint8Array(mesh.triangles.length / 3);
    this.#around = new Array(mesh.positions.length / 3);
    [this.#starts, this.#entries] = incidence(mesh);
  }

  collapseShort(): number {
    const short: { a: number; b: number; length: number }[] = [];
    for (let t = 0; t < this.#gone.length; t++) {
      if (this.#gone[t] === 1) continue;
      for (let k = 0; k < 3; k++) {
        const [a, b] = [this.#triangles[3 * t + k], this.#triangles[3 * t + ((k + 1) % 3)]];
        if (a >= b) continue;
        const square = this.#squareDistance(a, b);
        if (square <= SHORT_EDGE ** 2) short.push({ a, b, length: Math.sqrt(square) });
      }
    }
    short.sort((p, q) => p.length - q.length || p.a - q.a || p.b - q.b);
    return short.filter(({ a, b }) => this.#collapse(a, b) || this.#collapse(b, a)).length;
  }

  /** How many triangles were met flat, and how many of them flipped away. */
  flipFlat(): { flat: number; flipped: number } {
    let [flat, flipped] = [0, 0];
    for (let t = 0; t < this.#gone.length; t++) {
      if (this.#gone[t] === 1 || this.#height(t) > FLAT_HEIGHT) continue;
      flat++;
      if (this.#flip(t)) flipped++;
    }
    return { flat, flipped };
  }

  /** The mesh without what is gone, and without vertices that nothing uses. */
  result(): Mesh {
    const slot = new Int32Array(this.#positions.length / 3).fill(-1);
    const positions = new Float64Array(this.#positions.length);
    const triangles = new Uint32Array(this.#triangles.length);
    let [vertices, corners] = [0, 0];
    for (let t = 0; t < this.#gone.length; t++) {
      if (this.#gone[t] === 1) continue;
      for (let k = 0; k < 3; k++) {
        const vertex = this.#triangles[3 * t + k];
        if (slot[vertex] === -1) {
          slot[vertex] = vertices;
          for (let axis = 0; axis < 3; axis++) positions[3 * vertices + axis] = this.#positions[3 * vertex + axis];
          vertices++;
        }
        triangles[corners++] = slot[vertex];
      }
    }
    return { positions: positions.slice(0, 3 * vertices), triangles: triangles.slice(0, corners) };
  }

  /** Moves b to a, if the surface stays the same and no triangle turns over. */
  #collapse(a: number, b: number): boolean {
    const [aroundA, aroundB] = [this.#trianglesOf(a), this.#trianglesOf(b)];
    const dying = aroundB.filter((t) => this.#corners(t).includes(a));
    if (dying.length !== 2) return false;
    const common = this.#commonNeighbours(a, b);
    if (common.length === 3 && this.#squareDistance(a, b) <= FLAT_HEIGHT ** 2) {
      const tip = common.find((vertex) => this.#trianglesOf(vertex).length === 3);
      return tip !== undefined && this.#dropTip(tip, a, b) && this.#collapse(a, b);
    }
    if (common.length !== 2) return false;
    // Where the two common neighbours face both ends, all that is left is a tetrahedron, which would fold flat.
    const facesBoth = (list: readonly number[]) =>
      list.some((t) => !dying.includes(t) && common.every((vertex) => this.#corners(t).includes(vertex)));
    if (facesBoth(aroundA) && facesBoth(aroundB)) return false;
    const moving = aroundB.filter((t) => !dying.includes(t));
    if (moving.some((t) => this.#turnsOver(t, b, a))) return false;
    for (const t of dying) this.#gone[t] = 1;
    for (const t of moving) this.#triangles[3 * t + this.#corners(t).indexOf(b)] = a;
    this.#around[a] = [...aroundA.filter((t) => !dying.includes(t)), ...moving];
    this.#around[b] = [];
    for (const vertex of common) this.#around[vertex] = this.#trianglesOf(vertex).filter((t) => !dying.includes(t));
    return true;
  }

  #commonNeighbours(a: number, b: number): number[] {
    const neighbours = (vertex: number) => new Set(this.#trianglesOf(vertex).flatMap((t) => [...this.#corners(t)]));
    const beside = neighbours(a);
    return [...neighbours(b)].filter((vertex) => vertex !== a && vertex !== b && beside.has(vertex));
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

  /** Swaps the longest side of a flat triangle for the other diagonal of the two triangles on it. */
  #flip(t: number): boolean {
    const corners = [...this.#corners(t)];
    const lengths = corners.map((vertex, k) => this.#squareDistance(vertex, corners[(k + 1) % 3]));
    const side = lengths.indexOf(Math.max(...lengths));
    const [a, b, c] = [corners[side], corners[(side + 1) % 3], corners[(side + 2) % 3]];
    const other = this.#trianglesOf(a).find((s) => s !== t && this.#corners(s).includes(b));
    if (other === undefined) return false;
    const d = [...this.#corners(other)].find((vertex) => vertex !== a && vertex !== b) as number;
    if (d === c || this.#trianglesOf(c).some((s) => this.#corners(s).includes(d))) return false;
    const normal = this.#normal(a, d, b);
    const sound = (p: number, q: number, r: number) => dot(this.#normal(p, q, r), normal) > 0;
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
    const before = [...this.#corners(t)];
    const after = before.map((vertex) => (vertex === from ? to : vertex));
    const [n, m] = [this.#normal(before[0], before[1], before[2]), this.#normal(after[0], after[1], after[2])];
    return this.#height(t) > SHORT_EDGE && dot(n, m) <= 0;
  }

  #trianglesOf(vertex: number): number[] {
    const known = this.#around[vertex];
    if (known !== undefined) return known;
    const list = Array.from(this.#entries.subarray(this.#starts[vertex], this.#starts[vertex + 1]));
    this.#around[vertex] = list;
    return list;
  }

  #corners(t: number): Uint32Array {
    return this.#triangles.subarray(3 * t, 3 * t + 3);
  }

  #squareDistance(a: number, b: number): number {
    const p = this.#positions;
    const [x, y, z] = [p[3 * a] - p[3 * b], p[3 * a + 1] - p[3 * b + 1], p[3 * a + 2] - p[3 * b + 2]];
    return x * x + y * y + z * z;
  }

  #normal(a: number, b: number, c: number): [number, number, number] {
    const p = this.#positions;
    const [ux, uy, uz] = [p[3 * b] - p[3 * a], p[3 * b + 1] - p[3 * a + 1], p[3 * b + 2] - p[3 * a + 2]];
    const [vx, vy, vz] = [p[3 * c] - p[3 * a], p[3 * c + 1] - p[3 * a + 1], p[3 * c + 2] - p[3 * a + 2]];
    return [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
  }

  /** Smallest height of a triangle, mm. */
  #height(t: number): number {
    const [a, b, c] = [this.#triangles[3 * t], this.#triangles[3 * t + 1], this.#triangles[3 * t + 2]];
    const longest = Math.max(this.#squareDistance(a, b), this.#squareDistance(b, c), this.#squareDistance(c, a));
    const normal = this.#normal(a, b, c);
    return longest === 0 ? 0 : Math.sqrt(dot(normal, normal) / longest);
  }
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Triangles of each vertex, one list after the other. */
function incidence({ positions, triangles }: Mesh): [starts: Uint32Array, entries: Uint32Array] {
  const starts = new Uint32Array(positions.length / 3 + 1);
  for (const vertex of triangles) starts[vertex + 1]++;
  for (let i = 1; i < starts.length; i++) starts[i] += starts[i - 1];
  const next = starts.slice();
  const entries = new Uint32Array(triangles.length);
  triangles.forEach((vertex, i) => {
    entries[next[vertex]++] = Math.floor(i / 3);
  });
  return [starts, entries];
}
