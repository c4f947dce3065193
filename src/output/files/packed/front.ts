/**
 * The front of a mesh that is told triangle by triangle: the edges behind which nothing has been told yet, the newest last.
 * Who writes a mesh and who reads it keep the same front, so that a triangle is told by where its third corner lies in it.
 */

/** How far back in the front a corner is looked for; told by one byte with which end of the edge it is. Chosen. */
const DEEPEST = 120;

/** What is told of a triangle's third corner. */
export const NEW = 0;
export const FAR = 255;

export class Front {
  /** Two vertices of each edge, as it runs in the triangle that was told. */
  readonly #edges: number[] = [];

  push(from: number, to: number): void {
    this.#edges.push(from, to);
  }

  /** The newest edge, taken out; undefined at the end. */
  pop(): readonly [from: number, to: number] | undefined {
    const to = this.#edges.pop();
    const from = this.#edges.pop();
    return from === undefined || to === undefined ? undefined : [from, to];
  }

  /** 1 to 240, which tells a vertex by its place in the front; `FAR` where it lies too deep or is not there. */
  codeOf(vertex: number): number {
    const last = this.#edges.length - 1;
    const deepest = Math.min(2 * DEEPEST, this.#edges.length);
    for (let back = 0; back < deepest; back++) if (this.#edges[last - back] === vertex) return back + 1;
    return FAR;
  }

  /** The vertex that a code tells; undefined where it tells none. */
  vertexOf(code: number): number | undefined {
    return this.#edges[this.#edges.length - code];
  }
}
