/**
 * Outlines without the sides that a cut has given them: those that lie along its two edges across the strip.
 */
import type { GridPath, GridPoint } from "./grid.js";

/** An outline, parted. */
export interface Parted {
  /** Outlines with no side on an edge, as they are. */
  readonly closed: readonly GridPath[];
  /** What is left of the others, in their direction. */
  readonly open: readonly GridPath[];
}

/** Grid steps within which a point lies on an edge: rounding. */
const ON_EDGE = 2;

/**
 * Parts closed outlines where their sides lie on the edges, both of whose ends are within a few grid steps of it.
 *
 * @param half y of the upper edge, grid steps; the lower one is its image
 */
export function partAtEdges(outlines: readonly GridPath[], half: number): Parted {
  const closed: GridPath[] = [];
  const open: GridPath[] = [];
  const side = ({ y }: GridPoint) => (Math.abs(Math.abs(y) - half) <= ON_EDGE ? Math.sign(y) : 0);
  for (const ring of outlines) {
    const after = (i: number) => ring[(i + 1) % ring.length];
    const isCut = (i: number) => side(ring[i]) !== 0 && side(ring[i]) === side(after(i));
    const first = ring.findIndex((_, i) => isCut(i));
    if (first === -1) {
      closed.push(ring);
      continue;
    }
    let piece: GridPath = [];
    for (let k = 1; k <= ring.length; k++) {
      const i = (first + k) % ring.length;
      if (!isCut(i)) {
        piece.push(ring[i]);
        continue;
      }
      if (piece.length > 0) open.push([...piece, ring[i]]);
      piece = [];
    }
  }
  return { closed, open };
}
