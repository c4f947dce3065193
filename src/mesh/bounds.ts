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
export function meshBounds({ positions }: Mesh): Bounds {
  let [minX, minY, minZ] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  let [maxX, maxY, maxZ] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i];
    const y = positions[i + 1];
    const z = positions[i + 2];
    if (x < minX && x !== Number.NEGATIVE_INFINITY) minX = x;
    if (x > maxX && x !== Number.POSITIVE_INFINITY) maxX = x;
    if (y < minY && y !== Number.NEGATIVE_INFINITY) minY = y;
    if (y > maxY && y !== Number.POSITIVE_INFINITY) maxY = y;
    if (z < minZ && z !== Number.NEGATIVE_INFINITY) minZ = z;
    if (z > maxZ && z !== Number.POSITIVE_INFINITY) maxZ = z;
  }
  return { min: [minX, minY, minZ], max: [maxX, maxY, maxZ] };
}

/** The middle of a box, or the origin when the box is empty. */
export function boundsCentre({ min, max }: Bounds): Point3 {
  const middle = (k: 0 | 1 | 2) => (min[k] <= max[k] ? min[k] / 2 + max[k] / 2 : 0);
  return [middle(0), middle(1), middle(2)];
}
