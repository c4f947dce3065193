/**
 * The lines of vertices in a text STL. A closed mesh names a vertex six times on average, mostly within a short span,
 * so lines are kept for a while: each vertex has a slot that the next vertex of the same slot takes over.
 */

import { utf8 } from "../bytes.js";
import { FLOAT32_BYTES, writeFloat32 } from "../write-numbers.js";

const VERTEX = utf8("vertex");

/** A number of slots, a power of two: 5 MiB of lines. */
const SLOTS = 1 << 16;

/** Most bytes of three numbers, each behind a space. */
export const TRIPLE_BYTES = 3 * (FLOAT32_BYTES + 1);

/** Most bytes of one line: the word, three numbers, the line's end. */
export const VERTEX_LINE_BYTES = VERTEX.length + TRIPLE_BYTES + 1;

export class VertexLines {
  private readonly lines: Uint8Array;
  private readonly owners: Int32Array;
  private readonly lengths: Uint8Array;
  private readonly mask: number;

  /** @param positions vertices, written as the float32 nearest to them */
  constructor(private readonly positions: Float64Array) {
    let slots = 1;
    while (slots < SLOTS && 3 * slots < positions.length) slots *= 2;
    this.mask = slots - 1;
    this.lines = new Uint8Array(slots * VERTEX_LINE_BYTES);
    this.owners = new Int32Array(slots).fill(-1);
    this.lengths = new Uint8Array(slots);
  }

  /** Writes a vertex's line. Returns the new end. */
  write(bytes: Uint8Array, at: number, vertex: number): number {
    const slot = vertex & this.mask;
    const from = slot * VERTEX_LINE_BYTES;
    if (this.owners[slot] !== vertex) {
      this.lines.set(VERTEX, from);
      const end = writeTriple(this.lines, from + VERTEX.length, this.positions, 3 * vertex);
      this.lines[end] = 10;
      this.owners[slot] = vertex;
      this.lengths[slot] = end + 1 - from;
    }
    const length = this.lengths[slot];
    for (let k = 0; k < length; k++) bytes[at + k] = this.lines[from + k];
    return at + length;
  }
}

/** Writes three numbers, each behind a space. Returns the new end. */
export function writeTriple(bytes: Uint8Array, at: number, values: Float64Array, from: number): number {
  let end = at;
  for (let k = 0; k < 3; k++) {
    bytes[end] = 32;
    end = writeFloat32(bytes, end + 1, values[from + k]);
  }
  return end;
}
