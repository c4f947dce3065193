/**
 * A pattern whose relief stands higher by the same amount everywhere, on upright walls.
 */

import type { Surface } from "../art/image/surface.js";
import type { Point3 } from "../base/math/point.js";
import type { BeadLines } from "../beads/bead-lines.js";
import type { ReliefPolygon, ReliefShape } from "../relief/section.js";
import type { Pattern } from "./laid-out.js";

/** The pattern with its relief lifted, and with it the beads that stand on regions; what is cut stays where it is. */
export function liftPattern(pattern: Pattern, by: number): Pattern {
  if (by === 0) return pattern;
  return {
    ...pattern,
    reliefs: pattern.reliefs.map((shape) => liftRelief(shape, by)),
    beadLines: pattern.beadLines.map((run): BeadLines => (run.height > 0 ? { ...run, height: run.height + by } : run)),
    height: pattern.reliefs.length > 0 ? pattern.height + by : pattern.height,
  };
}

function liftRelief(shape: ReliefShape, by: number): ReliefShape {
  const { top, outline, surface, rise, height } = shape;
  return {
    ...shape,
    top: top.map((polygon) => liftPolygon(polygon, by)),
    outline: outline.map((polygon) => liftPolygon(polygon, by)),
    height: height + by,
    ...(surface === undefined ? {} : { surface: { ...surface, top: liftSurface(surface.top, by) } }),
    ...(rise === undefined ? {} : { rise: { ...rise, from: rise.from + by } }),
  };
}

function liftPolygon(polygon: ReliefPolygon, by: number): ReliefPolygon {
  return polygon.map((ring) => liftPoints(ring, by));
}

function liftSurface({ points, triangles }: Surface, by: number): Surface {
  return { points: liftPoints(points, by), triangles };
}

function liftPoints(points: readonly Point3[], by: number): Point3[] {
  return points.map(([u, v, h]): Point3 => [u, v, h + by]);
}
