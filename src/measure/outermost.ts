/**
 * How far a ring reaches from the finger axis.
 */
import type { Mesh } from "../mesh/mesh.js";

/** The farthest vertex from the z axis, mm; 0 of an empty mesh. */
export function outermost({ positions }: Mesh): number {
  let farthest = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i];
    const y = positions[i + 1];
    const square = x * x + y * y;
    if (square > farthest) farthest = square;
  }
  return Math.sqrt(farthest);
}
