/**
 * What is known of each vertex, asked for once and only of those that are seen.
 */
import type { KnownSurface } from "./known-surface.js";

/** Of one vertex: for each surface that it lies on the unit normal and the cosine of the most lean, four numbers each. */
export type KnownAtVertex = Float64Array;

const NOTHING: KnownAtVertex = new Float64Array(0);

export function knownNormals(
  positions: Float64Array,
  surfaces: readonly KnownSurface[],
): (vertex: number) => KnownAtVertex {
  if (surfaces.length === 0) return () => NOTHING;
  const known: (KnownAtVertex | undefined)[] = new Array(positions.length / 3);
  return (vertex) => {
    const before = known[vertex];
    if (before !== undefined) return before;
    const numbers: number[] = [];
    for (const surface of surfaces) {
      surface(positions[3 * vertex], positions[3 * vertex + 1], positions[3 * vertex + 2], (nx, ny, nz, lean) => {
        numbers.push(nx, ny, nz, Math.cos(lean));
      });
    }
    const found = numbers.length === 0 ? NOTHING : Float64Array.from(numbers);
    known[vertex] = found;
    return found;
  };
}
