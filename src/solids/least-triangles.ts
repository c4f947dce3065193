/**
 * About how many triangles a body comes to, before it is built.
 */
import type { FlatBody, ReliefPolygon } from "../relief/flat-body.js";

/** Upright walls have two triangles for each corner of the outline, what closes the body beneath one. */
const WALL_AND_FOOT = 3;

/** At the least, in all its copies: without what the band's facets divide. */
export function leastTriangles({ top, surface, outline, throat, copies }: FlatBody): number {
  const upper =
    surface === undefined ? corners(top) : (surface.top.triangles.length + surface.foot.triangles.length) / 3;
  return copies * (upper + WALL_AND_FOOT * (corners(outline) + corners(throat)));
}

function corners(polygons: readonly ReliefPolygon[]): number {
  return polygons.reduce((sum, rings) => rings.reduce((inner, ring) => inner + ring.length, sum), 0);
}
