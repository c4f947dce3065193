/**
 * Reads what `packMesh` wrote.
 */
import type { Mesh } from "../../../mesh/mesh.js";
import { FAR, Front, NEW } from "./front.js";
import { type Grid, predicted, unzigzag } from "./grid.js";

/**
 * @param bytes without their gzip
 * @throws RangeError where bytes and grid do not belong together
 */
export function unpackMesh({ vertices, triangles, far, step, origin }: Grid, bytes: Uint8Array): Mesh {
  const stepsAt = bytes.length - 9 * vertices;
  const codes = bytes.subarray(0, stepsAt - 4 * far);
  if (!(stepsAt >= 4 * far) || codes.length > triangles * 3) throw new RangeError("the mesh's bytes are not whole");
  const reading = new Reading(codes, bytes.subarray(stepsAt - 4 * far), { vertices, triangles, far });
  reading.all();
  const positions = Float64Array.from(reading.places, (value, i) => origin[i % 3] + step * value);
  return { positions, triangles: reading.triangles };
}

/** Hears a mesh triangle by triangle. */
class Reading {
  readonly places: Int32Array;
  readonly triangles: Uint32Array;
  readonly #front = new Front();
  readonly #codes: Uint8Array;
  readonly #rest: DataView;
  readonly #counts: Pick<Grid, "vertices" | "triangles" | "far">;
  /** By its two vertices, the corner of the triangle that lies beyond the directed edge. */
  readonly #beyond = new Map<number, number>();
  #code = 0;
  #far = 0;
  #vertex = 0;
  #corner = 0;

  constructor(codes: Uint8Array, rest: Uint8Array, counts: Pick<Grid, "vertices" | "triangles" | "far">) {
    this.#codes = codes;
    this.#rest = new DataView(rest.buffer, rest.byteOffset, rest.byteLength);
    this.#counts = counts;
    this.places = new Int32Array(3 * counts.vertices);
    this.triangles = new Uint32Array(3 * counts.triangles);
  }

  all(): void {
    while (this.#corner < this.triangles.length) {
      const corners = [0, 1, 2].map(() => this.#hear(this.#vertex - 1));
      this.#close(corners[0], corners[1], corners[2]);
      for (const [from, to] of [
        [0, 1],
        [1, 2],
        [2, 0],
      ])
        this.#front.push(corners[from], corners[to]);
      for (let edge = this.#front.pop(); edge !== undefined; edge = this.#front.pop()) this.#across(...edge);
    }
  }

  #across(from: number, to: number): void {
    if (this.#beyond.has(this.#key(to, from))) return;
    const third = this.#hear(from, to, this.#beyond.get(this.#key(from, to)));
    this.#close(to, from, third);
    this.#front.push(third, to);
    this.#front.push(from, third);
  }

  #hear(from: number, to = from, beyond = from): number {
    if (this.#code >= this.#codes.length) throw new RangeError("the mesh's bytes end too early");
    const code = this.#codes[this.#code++];
    if (code === NEW) return this.#place(from, to, beyond);
    const vertex = code === FAR ? this.#rest.getUint32(4 * this.#far++, true) : this.#front.vertexOf(code);
    if (vertex === undefined || vertex >= this.#vertex) throw new RangeError("a corner of the mesh is not there");
    return vertex;
  }

  #place(from: number, to: number, beyond: number): number {
    const vertex = this.#vertex++;
    const { vertices, far } = this.#counts;
    if (vertex >= vertices) throw new RangeError("the mesh has more corners than it tells");
    for (let axis = 0; axis < 3; axis++) {
      let value = 0;
      for (let k = 2; k >= 0; k--)
        value = 256 * value + this.#rest.getUint8(4 * far + vertices * (3 * k + axis) + vertex);
      this.places[3 * vertex + axis] = predicted(this.places, from, to, beyond, axis) + unzigzag(value);
    }
    return vertex;
  }

  #close(a: number, b: number, c: number): void {
    if (this.#corner >= this.triangles.length) throw new RangeError("the mesh has more triangles than it tells");
    this.triangles.set([a, b, c], this.#corner);
    this.#corner += 3;
    this.#beyond.set(this.#key(a, b), c);
    this.#beyond.set(this.#key(b, c), a);
    this.#beyond.set(this.#key(c, a), b);
  }

  #key(from: number, to: number): number {
    return from * this.#counts.vertices + to;
  }
}
