/**
 * The band: its cross-section turned once round the finger axis.
 */
import type { Point2 } from "../base/math/point.js";
import { TURN } from "../base/units.js";
import type { Mesh } from "../mesh/mesh.js";
import { triangulatePolygon } from "../mesh/triangulate.js";

export interface SweepOptions {
  /** Facets round the axis, 3 or more. */
  readonly facets: number;
  /** Angle of the first station, radians. */
  readonly startAngle: number;
}

/** @param polyline the closed cross-section in (w, r), mm, counter-clockwise */
export function sweepBand(polyline: readonly Point2[], { facets, startAngle }: SweepOptions): Mesh {
  const count = polyline.length;
  const positions = new Float64Array(3 * count * facets);
  const triangles = new Uint32Array(6 * count * facets);
  for (let j = 0; j < facets; j++) {
    const angle = startAngle + (TURN * j) / facets;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const next = (j + 1) % facets;
    polyline.forEach(([w, r], i) => {
      const [a, b] = [j * count + i, j * count + ((i + 1) % count)];
      const [c, d] = [next * count + i, next * count + ((i + 1) % count)];
      positions.set([r * cos, r * sin, w], 3 * a);
      triangles.set([a, b, d, a, d, c], 6 * a);
    });
  }
  return { positions, triangles };
}

/**
 * The part of the band from one of its facet lines to another, closed by flat ends.
 *
 * @param first number of the line at which it begins; it may be negative
 * @param count facets that it has, below those of the whole round
 */
export function sweepPart(
  polyline: readonly Point2[],
  { facets, startAngle }: SweepOptions,
  { first, count }: { readonly first: number; readonly count: number },
): Mesh {
  const corners = polyline.length;
  const positions = new Float64Array(3 * corners * (count + 1));
  const triangles: number[] = [];
  for (let j = 0; j <= count; j++) {
    const angle = startAngle + (TURN * (first + j)) / facets;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    polyline.forEach(([w, r], i) => {
      const [a, b] = [j * corners + i, j * corners + ((i + 1) % corners)];
      positions.set([r * cos, r * sin, w], 3 * a);
      if (j < count) triangles.push(a, b, b + corners, a, b + corners, a + corners);
    });
  }
  // Seen along the way round the cross-section is counter-clockwise.
  const cap = triangulatePolygon([polyline]);
  for (let i = 0; i < cap.length; i += 3) triangles.push(cap[i], cap[i + 2], cap[i + 1]);
  for (const corner of cap) triangles.push(count * corners + corner);
  return { positions, triangles: Uint32Array.from(triangles) };
}
