/**
 * The band: its cross-section turned once round the finger axis.
 */
import type { Point2 } from "../math/point.js";
import type { Mesh } from "../mesh/mesh.js";
import { TURN } from "../units.js";

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
