/**
 * A closed mesh in few bytes, for pages that carry it: corners on a grid, triangles told one beside the other, so that each
 * takes about a byte, and each new corner by how far it lies from where a parallelogram would have it (C. Touma, C. Gotsman,
 * Triangle mesh compression, 1998). `unpackMesh` gives the same triangles back in another order.
 */
import { gzipSync } from "fflate";
import { AnnuletError } from "../../../base/errors.js";
import { meshBounds } from "../../../mesh/bounds.js";
import { buildEdgeTable, nextEdge } from "../../../mesh/edges.js";
import type { Mesh } from "../../../mesh/mesh.js";
import { FAR, Front, NEW } from "./front.js";
import { type Grid, predicted, zigzag } from "./grid.js";

/** A packed mesh. */
export interface PackedMesh {
  /** What is needed to read the bytes; plain JSON. */
  readonly grid: Grid;
  /** gzip (RFC 1952). */
  readonly bytes: Uint8Array;
}

/** The grid is a micrometre at most, and finer where the design's tolerance is. */
const COARSEST = 0.001;

/** Of the tolerance, how fine the grid is. Chosen: rounding by half a step is then a twentieth of the tolerance. */
const SHARE = 0.1;

/**
 * @param tolerance of the design, mm: how far the mesh may lie from the true surface
 * @throws AnnuletError `mesh-malformed` where the mesh is not closed
 */
export function packMesh(mesh: Mesh, tolerance: number): PackedMesh {
  const { opposite, open, crowded } = buildEdgeTable(mesh);
  if (open.length > 0 || crowded.length > 0) throw notClosed(open.length + crowded.length);
  const step = Math.min(COARSEST, SHARE * tolerance);
  const { min } = meshBounds(mesh);
  const rounded = Int32Array.from(mesh.positions, (value, i) => Math.round((value - min[i % 3]) / step));
  const told = new Telling(mesh, opposite, rounded);
  told.all();
  const grid = {
    vertices: told.vertices,
    triangles: mesh.triangles.length / 3,
    far: told.far.length,
    step,
    origin: [min[0], min[1], min[2]],
  } as const;
  return { grid, bytes: gzipSync(joined(told), { level: 9, mtime: 0 }) };
}

/** Tells a mesh triangle by triangle. */
class Telling {
  readonly codes: number[] = [];
  /** Vertices that a code cannot tell. */
  readonly far: number[] = [];
  /** Steps of the grid between where each new vertex is and where it was expected; never below 0. */
  readonly steps: number[] = [];
  vertices = 0;
  readonly #front = new Front();
  readonly #numbers: Int32Array;
  readonly #told: Uint8Array;
  /** By its two new numbers, the directed edge of the mesh. */
  readonly #edgeOf = new Map<number, number>();
  /** Where new vertices lie, x, y, z in turn. */
  readonly #places: number[] = [];

  constructor(
    private readonly mesh: Mesh,
    private readonly opposite: Int32Array,
    private readonly rounded: Int32Array,
  ) {
    this.#numbers = new Int32Array(mesh.positions.length / 3).fill(-1);
    this.#told = new Uint8Array(mesh.triangles.length / 3);
  }

  all(): void {
    for (let t = 0; t < this.#told.length; t++) {
      if (this.#told[t] === 1) continue;
      this.#begin(t);
      for (let edge = this.#front.pop(); edge !== undefined; edge = this.#front.pop()) this.#across(edge);
    }
  }

  /** A triangle that lies beside none that was told. */
  #begin(t: number): void {
    const corners = [0, 1, 2].map((k) =>
      this.#tell(this.mesh.triangles[3 * t + k], this.vertices === 0 ? -1 : this.vertices - 1),
    );
    this.#close(3 * t, corners);
    for (const [from, to] of [
      [0, 1],
      [1, 2],
      [2, 0],
    ])
      this.#front.push(corners[from], corners[to]);
  }

  #across([from, to]: readonly [number, number]): void {
    const edge = this.opposite[this.#edgeOf.get(this.#key(from, to)) ?? -1];
    const t = Math.floor(edge / 3);
    if (this.#told[t] === 1) return;
    const apex = this.mesh.triangles[nextEdge(nextEdge(edge))];
    const known = this.#edgeOf.get(this.#key(from, to)) ?? 0;
    const beyond = this.#numbers[this.mesh.triangles[nextEdge(nextEdge(known))]];
    const third = this.#tell(apex, from, to, beyond);
    this.#close(edge, [to, from, third]);
    this.#front.push(third, to);
    this.#front.push(from, third);
  }

  /** Tells a corner: by its place in the front, by its number, or as a new one by its place in space. */
  #tell(vertex: number, from: number, to = from, beyond = from): number {
    const known = this.#numbers[vertex];
    if (known !== -1) {
      const code = this.#front.codeOf(known);
      this.codes.push(code);
      if (code === FAR) this.far.push(known);
      return known;
    }
    this.codes.push(NEW);
    for (let k = 0; k < 3; k++) {
      const value = this.rounded[3 * vertex + k];
      this.steps.push(zigzag(value - predicted(this.#places, from, to, beyond, k)));
      this.#places.push(value);
    }
    this.#numbers[vertex] = this.vertices;
    return this.vertices++;
  }

  /** Notes the directed edges of a triangle that was told, from one of its edges on. */
  #close(edge: number, corners: readonly number[]): void {
    this.#told[Math.floor(edge / 3)] = 1;
    let h = edge;
    for (let k = 0; k < 3; k++) {
      this.#edgeOf.set(this.#key(corners[k], corners[(k + 1) % 3]), h);
      h = nextEdge(h);
    }
  }

  #key(from: number, to: number): number {
    return from * this.#numbers.length + to;
  }
}

/** Bytes of a step's number: 24 bits are 16 m at a micrometre. */
const STEP_BYTES = 3;

/** Codes, numbers of far vertices, then the steps' low, middle and high bytes: like beside like packs best. */
function joined({ codes, far, steps }: Telling): Uint8Array {
  const bytes = new Uint8Array(codes.length + 4 * far.length + STEP_BYTES * steps.length);
  bytes.set(codes);
  const view = new DataView(bytes.buffer);
  for (const [i, number] of far.entries()) view.setUint32(codes.length + 4 * i, number, true);
  let at = codes.length + 4 * far.length;
  for (let k = 0; k < STEP_BYTES; k++) {
    // x of all, then y, then z.
    for (let axis = 0; axis < 3; axis++) {
      for (let i = axis; i < steps.length; i += 3) bytes[at++] = (steps[i] >>> (8 * k)) & 0xff;
    }
  }
  return bytes;
}

function notClosed(edges: number): AnnuletError {
  return new AnnuletError({
    code: "mesh-malformed",
    message: "only a closed mesh can be packed into a page",
    value: `${edges} edges without their other side`,
  });
}
