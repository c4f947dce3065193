/**
 * Whether a polyhedron is convex: no corner stands out of the plane of any facet.
 */
import { distanceTo } from "../base/math/half-space.js";
import { facetPlane, type Polyhedron } from "./polyhedron.js";

/** How far a body misses being a convex one of plane facets, mm. */
export interface Bulge {
  /** Greatest distance of a facet's own corners from its plane. */
  readonly unevenness: number;
  /** Greatest height of any other corner above a facet's plane: below 0 where all facets meet at an angle. */
  readonly above: number;
}

/** Looks at every corner from every facet. */
export function bulgeOf(body: Polyhedron): Bulge {
  let unevenness = 0;
  let above = Number.NEGATIVE_INFINITY;
  for (const facet of body.facets) {
    const plane = facetPlane(body, facet);
    const own = new Set(facet.ring);
    body.points.forEach(([x, y, z], i) => {
      const distance = distanceTo(plane, x, y, z);
      if (own.has(i)) unevenness = Math.max(unevenness, Math.abs(distance));
      else above = Math.max(above, distance);
    });
  }
  return { unevenness, above };
}
