/**
 * Polygon algebra on the grid: union, difference, offsets, ribbons. The one place that knows the polygon library.
 *
 * A region is a set of rings: outer rings counter-clockwise, holes clockwise, none crossing another.
 */
import {
  Clipper,
  Clipper64,
  ClipperOffset,
  ClipType,
  EndType,
  FillRule,
  JoinType,
  PointInPolygonResult,
} from "clipper2-ts";
import type { GridPath, GridPoint } from "./grid.js";

/** Rings of a region. */
export type GridRegion = readonly GridPath[];

/** How a corner on the outer side of an offset is made. */
export type Join = "miter" | "round";

/** How a ribbon along an open line ends. */
export type Ends = "butt" | "round" | "square";

/** Longest miter, in half widths, before a corner is cut off: corners sharper than 29° are. SVG's default too. */
const MITER_LIMIT = 4;

const FILLS = { nonzero: FillRule.NonZero, evenodd: FillRule.EvenOdd } as const;
const JOINS = { miter: JoinType.Miter, round: JoinType.Round } as const;
const ENDS = { butt: EndType.Butt, round: EndType.Round, square: EndType.Square } as const;

/** Everything covered by the rings under the fill rule. */
export function unite(rings: GridRegion, fill: keyof typeof FILLS = "nonzero"): GridRegion {
  const clipper = new Clipper64();
  clipper.addSubject(rings as GridPath[]);
  const result: GridPath[] = [];
  clipper.execute(ClipType.Union, FILLS[fill], result);
  return result;
}

/** What is in `region` and not in `hole`. */
export function subtract(region: GridRegion, hole: GridRegion): GridRegion {
  return Clipper.difference(region as GridPath[], hole as GridPath[], FillRule.NonZero);
}

/**
 * The region grown by `distance` grid steps (shrunk where negative).
 *
 * @param join corners on the grown side; corners that a shrink leaves behind stay sharp
 * @param arcTolerance grid steps between a round corner and its chords
 */
export function offset(region: GridRegion, distance: number, join: Join, arcTolerance: number): GridRegion {
  if (distance === 0) return region;
  return inflate(region, distance, JOINS[join], EndType.Polygon, MITER_LIMIT, arcTolerance);
}

/** A ribbon of `width` grid steps along open lines. */
export function ribbonAlong(
  lines: GridRegion,
  width: number,
  join: Join,
  ends: Ends,
  arcTolerance: number,
): GridRegion {
  return inflate(lines, width / 2, JOINS[join], ENDS[ends], MITER_LIMIT, arcTolerance);
}

/** A ribbon of `width` grid steps along closed lines, half on each side. */
export function ribbonAround(lines: GridRegion, width: number, join: Join, arcTolerance: number): GridRegion {
  return inflate(lines, width / 2, JOINS[join], EndType.Joined, MITER_LIMIT, arcTolerance);
}

/** Corners sharper than this many half widths are cut off while a region is cleaned, so that touching tips part. */
const CLEANING_MITER = 1.2;

/** Closes gaps and then opens necks narrower than twice `reach` grid steps; the rest moves by less than that. */
export function cleanRegion(region: GridRegion, reach: number): GridRegion {
  const step = (rings: GridRegion, distance: number) =>
    inflate(rings, distance, JoinType.Miter, EndType.Polygon, CLEANING_MITER, reach);
  return step(step(step(region, reach), -2 * reach), reach);
}

/** Signed area, positive for a counter-clockwise ring; grid steps squared. */
export function ringArea(ring: GridPath): number {
  return Clipper.area(ring);
}

/** Whether the point lies inside the ring or on it. */
export function contains(ring: GridPath, point: GridPoint): boolean {
  return Clipper.pointInPolygon(point, ring) !== PointInPolygonResult.IsOutside;
}

/** Drops vertices that stand within `reach` grid steps of the line through their neighbours. */
export function simplify(region: GridRegion, reach: number): GridRegion {
  return Clipper.simplifyPaths(region as GridPath[], reach, true);
}

function inflate(
  paths: GridRegion,
  distance: number,
  join: JoinType,
  ends: EndType,
  miterLimit: number,
  arcTolerance: number,
): GridRegion {
  if (paths.length === 0) return [];
  const offsetter = new ClipperOffset(miterLimit, arcTolerance);
  offsetter.addPaths(paths as GridPath[], join, ends);
  const result: GridPath[] = [];
  offsetter.execute(distance, result);
  return result;
}
