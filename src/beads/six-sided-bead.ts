/**
 * The plainest bead: a six-sided barrel with pointed ends, wholly inside its unit sphere. A plane across its waist meets it
 * in six points, where it meets an icosahedron in ten, and each of them costs triangles of what carries the bead.
 */
import { TURN } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";

/** Height of the two rings of corners over the middle, a share of the radius (chosen: as wide as it is round). */
const RING_HEIGHT = 0.44;

const SIDES = 6;

/** The largest distance between it and its sphere, a share of the radius: at the middle of its sides. */
export const SIX_SIDED_DEVIATION = 1 - Math.sqrt(1 - RING_HEIGHT ** 2) * Math.cos(TURN / SIDES / 2);

/** The barrel: its own mirror image in three planes at right angles, like the geodesic spheres. Its axis is z. */
export function sixSidedBead(): Mesh {
  const radius = Math.sqrt(1 - RING_HEIGHT ** 2);
  const ring = (height: number) =>
    Array.from({ length: SIDES }, (_, i) => {
      const angle = (TURN * i) / SIDES;
      return [radius * Math.cos(angle), radius * Math.sin(angle), height];
    });
  const [low, high, bottom, top] = [0, SIDES, 2 * SIDES, 2 * SIDES + 1];
  const triangles = Array.from({ length: SIDES }, (_, i) => {
    const next = (i + 1) % SIDES;
    const side = [low + i, low + next, high + next, low + i, high + next, high + i];
    return [...side, bottom, low + next, low + i, top, high + i, high + next];
  });
  return {
    positions: Float64Array.from([...ring(-RING_HEIGHT), ...ring(RING_HEIGHT), [0, 0, -1], [0, 0, 1]].flat()),
    triangles: Uint32Array.from(triangles.flat()),
  };
}
