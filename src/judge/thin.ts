/**
 * Triangles as they lie: those without area, the smallest angle, the shortest edge.
 */
import type { Mesh } from "../mesh/mesh.js";

/**
 * A triangle has no area when its smallest height is at most this share of the largest coordinate among its corners.
 *
 * The differences, products and sum of a cross product in double precision err by at most 8 · 2⁻⁵³ · |u| |v|, so the
 * height errs by at most 8 · 2⁻⁵³ times an edge, and an edge is at most 2√3 times the largest coordinate: together
 * below 2⁻⁴⁸. What lies under it cannot be told from zero. A float32 step is 2⁻²³ of the coordinate, so the threshold is a
 * 2⁻²⁵ part of it (4e-14 mm on a ring): three collinear float32 points are always caught, and a sliver that float32
 * can tell from a line is not.
 */
const FLAT_HEIGHT = 2 ** -48;

/** Room for the rounding of products and of two functions, a hundred times over: an angle this near is worked out. */
const NEARLY = 1 + 1e-13;

export interface Thin {
  /** Triangles without area. */
  readonly flat: readonly number[];
  /** Radians; infinite where there is no triangle. */
  readonly smallestAngle: number;
  /** mm; infinite where there is no triangle. */
  readonly shortestEdge: number;
}

/** @param skip 1 for each triangle that is left out */
export function findThin({ positions: p, triangles }: Mesh, skip: Uint8Array): Thin {
  const flat: number[] = [];
  const lowest = FLAT_HEIGHT * largestOf(p);
  let smallestAngle = Number.POSITIVE_INFINITY;
  let shortestSquare = Number.POSITIVE_INFINITY;
  /** Tangents above it belong to angles above the smallest one. */
  let tangent = Number.MAX_VALUE;
  for (let t = 0; t < skip.length; t++) {
    if (skip[t] !== 0) continue;
    const a = 3 * triangles[3 * t];
    const b = 3 * triangles[3 * t + 1];
    const c = 3 * triangles[3 * t + 2];
    const ax = p[a];
    const ay = p[a + 1];
    const az = p[a + 2];
    const bx = p[b];
    const by = p[b + 1];
    const bz = p[b + 2];
    const cx = p[c];
    const cy = p[c + 1];
    const cz = p[c + 2];
    const ux = bx - ax;
    const uy = by - ay;
    const uz = bz - az;
    const vx = cx - ax;
    const vy = cy - ay;
    const vz = cz - az;
    const wx = cx - bx;
    const wy = cy - by;
    const wz = cz - bz;
    const u = ux * ux + uy * uy + uz * uz;
    const v = vx * vx + vy * vy + vz * vz;
    const w = wx * wx + wy * wy + wz * wz;
    const nx = uy * vz - uz * vy;
    const ny = uz * vx - ux * vz;
    const nz = ux * vy - uy * vx;
    const cross = Math.sqrt(nx * nx + ny * ny + nz * nz);
    const longest = Math.sqrt(Math.max(u, v, w));
    const shortest = Math.min(u, v, w);
    // Few are so low by the largest coordinate of all; those are held against their own.
    if (!(cross > lowest * longest)) {
      const size = Math.max(
        Math.max(Math.abs(ax), Math.abs(ay), Math.abs(az)),
        Math.max(Math.abs(bx), Math.abs(by), Math.abs(bz)),
        Math.max(Math.abs(cx), Math.abs(cy), Math.abs(cz)),
      );
      if (cross <= FLAT_HEIGHT * size * longest) flat.push(t);
    }
    if (shortest < shortestSquare) shortestSquare = shortest;
    // The smallest angle faces the shortest edge; twice its cosine times the other two edges is u + v + w − 2 shortest.
    const beside = u + v + w - 2 * shortest;
    if (2 * cross <= tangent * beside) {
      const angle = Math.atan2(2 * cross, beside);
      if (angle < smallestAngle) {
        smallestAngle = angle;
        tangent = Math.tan(angle) * NEARLY;
      }
    }
  }
  return { flat, smallestAngle, shortestEdge: Math.sqrt(shortestSquare) };
}

/** The largest coordinate, its sign left aside; those that are not numbers are passed over. */
function largestOf(coordinates: Float64Array): number {
  let largest = 0;
  for (let i = 0; i < coordinates.length; i++) {
    const size = Math.abs(coordinates[i]);
    if (size > largest) largest = size;
  }
  return largest;
}
