/**
 * Moves completed patterns to their places on the seat, and puts several together.
 */

import type { Surface } from "../art/image/surface.js";
import { greatestCommon } from "../base/math/greatest-common.js";
import type { Point2, Point3 } from "../base/math/point.js";
import type { BeadLines } from "../beads/bead-lines.js";
import type { HoleShape } from "../relief/hole.js";
import type { ReliefPolygon, ReliefShape } from "../relief/section.js";
import type { Carving, Pattern } from "./laid-out.js";

/** Where a pattern goes: u becomes `u` + u, or `u` − u where it is mirrored; v becomes `v` + v. mm. */
export interface Placement {
  readonly u: number;
  /** Default 0. */
  readonly v?: number;
  /** Default no. Only a pattern that ends by itself can be. */
  readonly mirrored?: boolean;
}

/** The pattern in each of several places. */
export function placePattern(pattern: Pattern, places: readonly Placement[]): Pattern {
  const count = places.length;
  const all = <T>(shapes: readonly T[], move: (shape: T, place: Placement) => T): T[] =>
    shapes.flatMap((shape) => places.map((place) => move(shape, place)));
  return {
    ...pattern,
    reliefs: all(pattern.reliefs, moveRelief),
    carvings: pattern.carvings.map(({ after, sunk, pierced }): Carving => {
      return { after: after * count, sunk: all(sunk, moveRelief), pierced: all(pierced, moveHole) };
    }),
    beadLines: pattern.beadLines.map((run): BeadLines => ({ ...run, lines: all(run.lines, moveLine) })),
    holes: pattern.holes * count,
  };
}

/** Patterns that lie beside each other, as one. */
export function joinPatterns(patterns: readonly Pattern[]): Pattern {
  let before = 0;
  const carvings = patterns.flatMap((pattern) => {
    const own = pattern.carvings.map((carving) => ({ ...carving, after: carving.after + before }));
    before += pattern.reliefs.length;
    return own;
  });
  return {
    reliefs: patterns.flatMap(({ reliefs }) => reliefs),
    carvings,
    beadLines: patterns.flatMap(({ beadLines }) => beadLines),
    height: Math.max(0, ...patterns.map(({ height }) => height)),
    repeats: patterns.map(({ repeats }) => repeats).reduce(greatestCommon),
    holes: patterns.reduce((sum, { holes }) => sum + holes, 0),
  };
}

function alongOf({ u, mirrored = false }: Placement): (value: number) => number {
  return mirrored ? (value) => u - value : (value) => u + value;
}

function moveRelief<Shape extends ReliefShape>(shape: Shape, place: Placement): Shape {
  const along = alongOf(place);
  const { fade, rise, surface } = shape;
  const { u, v = 0, mirrored = false } = place;
  const ends = fade === undefined ? undefined : [along(fade.ends[0]), along(fade.ends[1])].sort((a, b) => a - b);
  return {
    ...shape,
    top: shape.top.map((polygon) => movePolygon(polygon, place)),
    outline: shape.outline.map((polygon) => movePolygon(polygon, place)),
    seam: moveSeam(shape.seam, place),
    ...(surface === undefined
      ? {}
      : { surface: { top: moveSurface(surface.top, place), foot: moveSurface(surface.foot, place) } }),
    ...(fade === undefined ? {} : { fade: { ...fade, ends } }),
    ...(rise === undefined ? {} : { rise: { ...rise, at: (x, y) => rise.at(mirrored ? u - x : x - u, y - v) } }),
  };
}

/** The triangles of a mirrored surface are turned round as rings are. */
function moveSurface({ points, triangles }: Surface, place: Placement): Surface {
  const moved = movePoints(points, place);
  return { points: moved, triangles: place.mirrored ? triangles.toReversed() : triangles };
}

function moveHole(shape: HoleShape, place: Placement): HoleShape {
  const move = (polygons: readonly ReliefPolygon[]) => polygons.map((polygon) => movePolygon(polygon, place));
  return {
    ...shape,
    ...{ edge: move(shape.edge), mouth: move(shape.mouth), wall: move(shape.wall) },
    seam: moveSeam(shape.seam, place),
  };
}

function moveSeam(seam: ReliefShape["seam"], place: Placement): ReliefShape["seam"] {
  const along = alongOf(place);
  return seam === undefined ? undefined : [along(seam[0]), along(seam[1])];
}

/** A mirrored ring is turned round, so that its inside stays on its left. */
function movePolygon(polygon: ReliefPolygon, place: Placement): ReliefPolygon {
  return polygon.map((ring) => {
    const moved = movePoints(ring, place);
    return place.mirrored ? moved.reverse() : moved;
  });
}

function movePoints(points: readonly Point3[], place: Placement): Point3[] {
  const along = alongOf(place);
  return points.map(([x, y, h]): Point3 => [along(x), y + (place.v ?? 0), h]);
}

function moveLine(line: BeadLines["lines"][number], place: Placement): BeadLines["lines"][number] {
  const along = alongOf(place);
  return { ...line, points: line.points.map(([x, y]): Point2 => [along(x), y + (place.v ?? 0)]) };
}
