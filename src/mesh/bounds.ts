/**
 * The box round a mesh.
 */
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "./mesh.js";

/** The box round a mesh, mm. */
export interface Bounds {
  /** Lowest x, y, z, mm. */
  readonly min: Point3;
  /** Highest x, y, z, mm. */
  readonly max: Point3;
}

/** The box round the vertices; coordinates that are not finite are passed over. Infinite and inverted when empty. */
export function meshBounds(mesh: Mesh): Bounds {
  const min: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const max: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const { positions } = mesh;
  for (let i = 0; i < positions.length; i += 3) {
    for (let k = 0; k < 3; k++) {
      const value = positions[i + k];
      if (!Number.isFinite(value)) continue;
      if (value < min[k]) min[k] = value;
      if (value > max[k]) max[k] = value;
    }
  }
  return { min, max };
}

/** The middle of a box, or the origin when the box is empty. */
export function boundsCentre({ min, max }: Bounds): Point3 {
  const middle = (k: 0 | 1 | 2) => (min[k] <= max[k] ? min[k] / 2 + max[k] / 2 : 0);
  return [middle(0), middle(1), middle(2)];
}
