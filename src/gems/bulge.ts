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
  const positions = Float64Array.from(body.points.flat());
  // The facet that a corner was last found to belong to.
  const of = new Int32Array(body.points.length).fill(-1);
  let unevenness = 0;
  let above = Number.NEGATIVE_INFINITY;
  body.facets.forEach((facet, f) => {
    const plane = facetPlane(body, facet);
    for (const corner of facet.ring) of[corner] = f;
    for (let i = 0; i < of.length; i++) {
      const distance = distanceTo(plane, positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]);
      if (of[i] === f) unevenness = Math.max(unevenness, Math.abs(distance));
      else above = Math.max(above, distance);
    }
  });
  return { unevenness, above };
}
