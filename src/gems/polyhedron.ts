/**
 * A body with plane, convex facets, each named, and the mesh of it.
 */
import { vec3 } from "gl-matrix";
import type { HalfSpace } from "../base/math/half-space.js";
import type { Point3 } from "../base/math/point.js";
import type { Mesh } from "../mesh/mesh.js";

/** What the trade calls a facet. */
export type FacetName =
  | "table"
  | "star"
  | "bezel"
  | "upper half"
  | "crown step"
  | "crown side"
  | "girdle"
  | "pavilion main"
  | "lower half"
  | "pavilion step"
  | "chevron"
  | "culet"
  | "dome"
  | "base";

/** One plane facet. */
export interface Facet {
  readonly name: FacetName;
  /** Indices of its corners, counter-clockwise seen from outside, three or more. */
  readonly ring: readonly number[];
}

/** A closed body: each point stands once. */
export interface Polyhedron {
  readonly points: readonly Point3[];
  readonly facets: readonly Facet[];
}

/** Collects points and facets. */
export class PolyhedronDraft {
  readonly points: Point3[] = [];
  readonly facets: Facet[] = [];

  /** Adds a point; its index. */
  point(at: Point3): number {
    return this.points.push(at) - 1;
  }

  /** Adds a facet of which corners may coincide: one of fewer than three corners is none. */
  facet(name: FacetName, ring: readonly number[]): void {
    const corners = ring.filter((corner, i) => corner !== ring[(i + 1) % ring.length]);
    if (corners.length >= 3) this.facets.push({ name, ring: corners });
  }
}

/** The plane of a facet, its normal outward (Newell's sums, by which every corner counts alike). */
export function facetPlane({ points }: Polyhedron, { ring }: Facet): HalfSpace {
  const normal: [number, number, number] = [0, 0, 0];
  ring.forEach((corner, i) => {
    const [ax, ay, az] = points[corner];
    const [bx, by, bz] = points[ring[(i + 1) % ring.length]];
    normal[0] += (ay - by) * (az + bz);
    normal[1] += (az - bz) * (ax + bx);
    normal[2] += (ax - bx) * (ay + by);
  });
  vec3.normalize(normal, normal);
  const offset = ring.reduce((sum, corner) => sum + vec3.dot(normal, points[corner]), 0) / ring.length;
  return { normal, offset };
}

/** The mesh of a polyhedron: each facet a fan of triangles, points shared as they are. */
export function polyhedronMesh({ points, facets }: Polyhedron): Mesh {
  const triangles = facets.flatMap(({ ring }) => ring.slice(2).flatMap((corner, i) => [ring[0], ring[i + 1], corner]));
  return { positions: Float64Array.from(points.flat()), triangles: Uint32Array.from(triangles) };
}

/** The same with x taken so often; a plane stays a plane. */
export function stretchPolyhedron({ points, facets }: Polyhedron, stretch: number): Polyhedron {
  return { points: points.map(([x, y, z]): Point3 => [x * stretch, y, z]), facets };
}
