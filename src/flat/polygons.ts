/**
 * Polygon algebra on the grid: union, difference, offsets, ribbons. The one place that knows the polygon library.
 *
 * A region is a set of rings: outer rings counter-clockwise, holes clockwise, none crossing another.
 */
import { Clipper, Clipper64, ClipperOffset, ClipType, EndType, FillRule, JoinType } from "clipper2-ts";
import { polygonsOf } from "../base/math/polygon.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { apartAlong } from "./apart-along.js";
import { boxRing, type GridBox, ringBox } from "./box.js";
import { limitCrossings } from "./crossing-limit.js";
import type { GridPath, GridPoint } from "./grid.js";
import { dropSpikes } from "./spikes.js";
import { isLongRow, sweepAlong } from "./sweep-along.js";

/** Rings of a region. */
export type GridRegion = readonly GridPath[];

/** How a corner on the outer side of an offset is made. */
export type Join = "miter" | "round";

/** How a ribbon along an open line ends. */
export type Ends = "butt" | "round" | "square";

/** Longest miter, in half widths, before a corner is cut off: corners sharper than 29° are. SVG's default too. */
export const MITER_LIMIT = 4;

const rings = polygonsOf<GridPoint>({ x: (point) => point.x, y: (point) => point.y });

const FILLS = { nonzero: FillRule.NonZero, evenodd: FillRule.EvenOdd } as const;
const JOINS = { miter: JoinType.Miter, round: JoinType.Round } as const;
const ENDS = { butt: EndType.Butt, round: EndType.Round, square: EndType.Square } as const;

/** One operation, within bounds, swept the way that is shorter. */
function sweep(...how: Parameters<typeof sweepAlong>): GridRegion {
  return limitCrossings(() => sweepAlong(...how));
}

/** Everything covered by the rings under the fill rule. `isLong`: as of `sweepAlong`. */
export function unite(rings: GridRegion, fill: keyof typeof FILLS = "nonzero", isLong?: boolean): GridRegion {
  const unspiked = rings.map(dropSpikes).filter((ring) => ring.length > 2);
  const work = ([subject]: readonly GridRegion[]) => {
    const clipper = new Clipper64();
    clipper.addSubject(subject as GridPath[]);
    const result: GridPath[] = [];
    clipper.execute(ClipType.Union, FILLS[fill], result);
    return result;
  };
  return sweep([unspiked], work, isLong);
}

/** The same in pieces: what lies apart along the strip is united by itself. */
export function* uniting(rings: GridRegion, fill: keyof typeof FILLS = "nonzero"): Pausing<GridRegion> {
  const united: GridPath[] = [];
  const isLong = isLongRow(rings);
  for (const list of apartAlong(rings)) {
    yield BREATH;
    for (const ring of unite(list, fill, isLong)) united.push(ring);
  }
  return united;
}

/** What is in `region` and not in `hole`. */
export function subtract(region: GridRegion, hole: GridRegion): GridRegion {
  return sweep([region, hole], ([from, what]) =>
    Clipper.difference(from as GridPath[], what as GridPath[], FillRule.NonZero),
  );
}

/** What is in both regions. */
export function intersect(region: GridRegion, other: GridRegion): GridRegion {
  return sweep([region, other], ([a, b]) => Clipper.intersect(a as GridPath[], b as GridPath[], FillRule.NonZero));
}

/** The parts of open lines inside a region, or outside it. */
export function clipLinesTo(lines: GridRegion, region: GridRegion, side: "inside" | "outside"): GridRegion {
  if (lines.length === 0) return [];
  const clipper = new Clipper64();
  clipper.addOpenSubject(lines as GridPath[]);
  clipper.addClip(region as GridPath[]);
  const closed: GridPath[] = [];
  const open: GridPath[] = [];
  const type = side === "inside" ? ClipType.Intersection : ClipType.Difference;
  limitCrossings(() => clipper.execute(type, FillRule.NonZero, closed, open));
  return open.map((line) => line.map(({ x, y }) => ({ x, y })));
}

/**
 * The region grown by `distance` grid steps (shrunk where negative).
 *
 * @param join corners on the grown side; corners that a shrink leaves behind stay sharp
 * @param arcTolerance grid steps between a round corner and its chords
 */
export function offset(region: GridRegion, distance: number, join: Join, arcTolerance: number): GridRegion {
  if (distance === 0) return region;
  return inflate(region, distance, { join: JOINS[join], ends: EndType.Polygon, arcTolerance });
}

/** What of the region lies at least `distance` grid steps inside its outline; inner corners become arcs about them. */
export function shrink(region: GridRegion, distance: number, arcTolerance: number): GridRegion {
  return offset(region, -distance, "round", arcTolerance);
}

/** A ribbon of `width` grid steps along open lines. */
export function ribbonAlong(
  lines: GridRegion,
  width: number,
  join: Join,
  ends: Ends,
  arcTolerance: number,
): GridRegion {
  return inflate(lines, width / 2, { join: JOINS[join], ends: ENDS[ends], arcTolerance });
}

/** A ribbon of `width` grid steps along closed lines, half on each side. */
export function ribbonAround(lines: GridRegion, width: number, join: Join, arcTolerance: number): GridRegion {
  return inflate(lines, width / 2, { join: JOINS[join], ends: EndType.Joined, arcTolerance });
}

/** Corners sharper than this many half widths are cut off while a region is cleaned, so that touching tips part. */
const CLEANING_MITER = 1.02;

/** Touching tips are opened by this many reaches, so that the closing of gaps does not join them again. */
const TIP_REACHES = 3;

/**
 * Parts what meets in a tip, closes gaps narrower than twice `reach` grid steps and opens necks narrower than that.
 * All else moves by less than `TIP_REACHES` reaches, and only at sharp corners.
 */
export function cleanRegion(region: GridRegion, reach: number): GridRegion {
  const move = (rings: GridRegion, distance: number) =>
    inflate(rings, distance, { ...MITERED, miterLimit: CLEANING_MITER, arcTolerance: reach });
  const opened = move(move(region, -TIP_REACHES * reach), TIP_REACHES * reach);
  return move(move(move(opened, reach), -2 * reach), reach);
}

/** Signed area, positive for a counter-clockwise ring; grid steps squared. */
export function ringArea(ring: GridPath): number {
  return rings.area(ring);
}

/** The part of the region between two x, within ± y of the middle line; all in grid steps. */
export function clipAlong(region: GridRegion, low: number, high: number, reach: number): GridRegion {
  return clipWithin(region, { left: low, right: high, low: -reach, high: reach }, 0);
}

/** The part of the region within a box grown by `margin` grid steps. */
export function clipWithin(region: GridRegion, box: GridBox, margin: number): GridRegion {
  const [left, right] = [Math.round(box.left - margin), Math.round(box.right + margin)];
  const [low, high] = [Math.round(box.low - margin), Math.round(box.high + margin)];
  // A ring whose box lies apart covers nothing of this one.
  const near = region.filter((ring) => {
    const own = ringBox(ring);
    return own.left <= right && own.right >= left && own.low <= high && own.high >= low;
  });
  return intersect(near, [boxRing({ left, right, low, high })]);
}

/** The region grown by a little, with corners kept up to 10 distances long. */
export function grow(region: GridRegion, distance: number): GridRegion {
  return inflate(region, distance, { ...MITERED, miterLimit: COMPARING_MITER, arcTolerance: distance });
}

/** Corners sharper than 11.5° are cut off. */
const COMPARING_MITER = 10;

/** Whether the point lies inside the ring or on it. */
export function contains(ring: GridPath, point: GridPoint): boolean {
  return rings.side(ring, point) >= 0;
}

/** Drops vertices that stand within `reach` grid steps of the line through their neighbours. */
export function simplify(region: GridRegion, reach: number): GridRegion {
  return Clipper.simplifyPaths(region as GridPath[], reach, true);
}

/** How what is offset is joined at its corners and ended. */
interface Inflation {
  readonly join: JoinType;
  readonly ends: EndType;
  /** Longest tip of a mitred corner over the distance. Default `MITER_LIMIT`. */
  readonly miterLimit?: number;
  /** Largest deviation of rounded corners, grid steps. */
  readonly arcTolerance: number;
}

const MITERED = { join: JoinType.Miter, ends: EndType.Polygon } as const;

function inflate(paths: GridRegion, distance: number, inflation: Inflation): GridRegion {
  const { join, ends, miterLimit = MITER_LIMIT, arcTolerance } = inflation;
  if (paths.length === 0) return [];
  return sweep([paths], ([own]) => {
    const offsetter = new ClipperOffset(miterLimit, arcTolerance);
    offsetter.addPaths(own as GridPath[], join, ends);
    const result: GridPath[] = [];
    offsetter.execute(distance, result);
    return result;
  });
}
