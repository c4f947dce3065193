/**
 * Tells of triangles of a mesh that is being tidied how often they cross others: corners take each other's place, but no
 * point moves, so one tree over the mesh as it was serves to find what is near.
 */
import { BoxTree } from "../mesh/box-tree.js";
import { depthOf } from "../mesh/crossings.js";
import type { Mesh } from "../mesh/mesh.js";
import { TrianglesMeet } from "../mesh/triangles-meet.js";

/** What crosses less deep than this, mm, is let pass: a few steps of single precision on a ring. */
const SHALLOW = 1e-5;

/** How far corners of a triangle may have gone by the work so far, mm: ten collapsed edges of the greatest length. */
const GONE = 0.02;

export class CrossingWatch {
  readonly #mesh: Mesh;
  readonly #gone: Uint8Array;
  readonly #test: TrianglesMeet;
  #tree: BoxTree | undefined;
  readonly #box = new Float64Array(6);

  /**
   * @param mesh its triangles change while it is watched
   * @param gone 1 where a triangle is no more
   */
  constructor(mesh: Mesh, gone: Uint8Array) {
    this.#mesh = mesh;
    this.#gone = gone;
    this.#test = new TrianglesMeet(mesh);
  }

  /** How often some triangles, as they are now, cross others deeper than 10 nm. */
  count(triangles: readonly number[]): number {
    this.#tree ??= new BoxTree(
      this.#mesh,
      Uint32Array.from({ length: this.#gone.length }, (_, t) => t),
    );
    let crossed = 0;
    for (const t of triangles) {
      if (this.#gone[t] === 1) continue;
      this.#surround(t);
      this.#tree.around(this.#box, (other) => {
        if (other === t || this.#gone[other] === 1 || !this.#test.meet(t, other)) return;
        if (depthOf(this.#mesh, t, other) > SHALLOW) crossed++;
      });
    }
    return crossed;
  }

  #surround(t: number): void {
    const { positions: p, triangles } = this.#mesh;
    const [a, b, c] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    for (let k = 0; k < 3; k++) {
      this.#box[k] = Math.min(p[a + k], p[b + k], p[c + k]) - GONE;
      this.#box[k + 3] = Math.max(p[a + k], p[b + k], p[c + k]) + GONE;
    }
  }
}
