/**
 * The band: its cross-section taken once round the finger axis.
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

/** The closed cross-section at θ in (w, r), mm, counter-clockwise; at all angles as many corners. */
export type PolylineAt = (angle: number) => readonly Point2[];

export function sweepBand(polylineAt: PolylineAt, { facets, startAngle }: SweepOptions): Mesh {
  const count = polylineAt(startAngle).length;
  const positions = new Float64Array(3 * count * facets);
  const triangles = new Uint32Array(6 * count * facets);
  for (let j = 0; j < facets; j++) {
    const angle = startAngle + (TURN * j) / facets;
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const next = (j + 1) % facets;
    polylineAt(angle).forEach(([w, r], i) => {
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
  polylineAt: PolylineAt,
  { facets, startAngle }: SweepOptions,
  { first, count }: { readonly first: number; readonly count: number },
): Mesh {
  const angleOf = (line: number) => startAngle + (TURN * (first + line)) / facets;
  const corners = polylineAt(startAngle).length;
  const positions = new Float64Array(3 * corners * (count + 1));
  const triangles: number[] = [];
  for (let j = 0; j <= count; j++) {
    const angle = angleOf(j);
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    polylineAt(angle).forEach(([w, r], i) => {
      const [a, b] = [j * corners + i, j * corners + ((i + 1) % corners)];
      positions.set([r * cos, r * sin, w], 3 * a);
      if (j < count) triangles.push(a, b, b + corners, a, b + corners, a + corners);
    });
  }
  // Seen along the way round the cross-section is counter-clockwise.
  const [start, end] = [0, count].map((line) => triangulatePolygon([polylineAt(angleOf(line))]));
  for (let i = 0; i < start.length; i += 3) triangles.push(start[i], start[i + 2], start[i + 1]);
  for (const corner of end) triangles.push(count * corners + corner);
  return { positions, triangles: Uint32Array.from(triangles) };
}
