/**
 * Strokes as regions: SVG's caps, joins and miter limit. SVG 1.1 (Second Edition), 11.4.
 *
 * Between its corners a line is stroked with round joins, whose arcs are the parallel curves of what was flattened; at
 * corners the wedge of the join is added.
 */
import { chordCount } from "../../base/math/curve.js";
import { flattenPathSegment, type Subpath } from "../../base/math/path-data.js";
import type { Point2 } from "../../base/math/point.js";
import { TURN } from "../../base/units.js";
import { type GridPath, type GridPoint, toGrid } from "../../flat/grid.js";
import { type GridRegion, ribbonAlong, ribbonAround, ringArea, unite } from "../../flat/polygons.js";
import { cutDashes, type DashPattern, dashCount, type FlatLine, lengthOf } from "./dashes.js";
import type { Stroke } from "./drawing.js";
import { refuseTangled } from "./refuse-tangled.js";

/** How a stroke is worked in its own coordinates. */
export interface StrokeGrid {
  /** Grid steps in a unit of the shape. */
  readonly scale: number;
  /** Largest deviation, grid steps. */
  readonly tolerance: number;
  /** Told how many points each piece comes to; throws where there are too many. */
  readonly count: (points: number) => void;
}

/** Strokes are flattened this much finer than they may deviate: their outside is a wider curve than the line itself. */
const FINER = 0.25;

/** The region that a stroke covers, on the stroke's grid. `where` is the file's place in the document, for errors. */
export function strokeRegion(
  subpaths: readonly Subpath[],
  stroke: Stroke,
  grid: StrokeGrid,
  where: string,
): GridRegion {
  const lines = subpaths.map((subpath) => {
    const line = flatten(subpath, grid, where);
    // Its ribbons cross where it does, each with both sides.
    refuseTangled([line.points], where, SIDES);
    return { line, closed: subpath.closed };
  });
  const parts = dash(lines, stroke, grid).flatMap(({ line, closed }) =>
    strokeOne(line, closed, stroke, grid.tolerance, grid.scale),
  );
  refuseTangled(parts, where);
  return unite(parts);
}

/** Pairs of sides that cross where two ribbons do. */
const SIDES = 4;

/** A line of a path. */
interface PathLine {
  readonly line: FlatLine;
  readonly closed: boolean;
}

/** The dashes of lines, or the lines where they have none. */
function dash(lines: readonly PathLine[], { dashes }: Stroke, grid: StrokeGrid): readonly PathLine[] {
  if (dashes === undefined) return lines;
  const { lengths, offset, pathLength } = dashes;
  const long = lines.map(({ line, closed }) => lengthOf(line.points, closed));
  const whole = long.reduce((sum, one) => sum + one, 0);
  const unit = pathLength === undefined ? grid.scale : whole / pathLength;
  const pattern: DashPattern = { lengths: lengths.map((length) => length * unit), offset: offset * unit };
  return lines.flatMap(({ line, closed }, i) => {
    if (line.points.length < 2) return [{ line, closed }];
    grid.count(dashCount(long[i], pattern));
    const { pieces, solid } = cutDashes(line, closed, pattern);
    return solid ? [{ line, closed }] : pieces.map((piece) => ({ line: piece, closed: false }));
  });
}

function strokeOne(
  { points, joints, facing }: FlatLine,
  closed: boolean,
  stroke: Stroke,
  tolerance: number,
  scale: number,
): GridRegion {
  const width = stroke.width * scale;
  if (points.length < 2) return dot({ at: points[0], facing }, width, stroke, tolerance);
  if (stroke.join === "round") {
    return closed
      ? ribbonAround([points], width, "round", tolerance)
      : ribbonAlong([points], width, "round", stroke.cap, tolerance);
  }
  const corners = cornersOf(points, joints, closed, width, tolerance);
  if (closed && corners.length === 0) return ribbonAround([points], width, "round", tolerance);
  const pieces = closed ? splitRing(points, corners) : splitLine(points, corners);
  const wedges = corners.map((at) => leftHanded(wedge(points, at, width / 2, stroke)));
  const ribbons = ribbonAlong(pieces, width, "round", "butt", tolerance);
  return [...ribbons, ...wedges, ...(closed ? [] : capsOf(points, width, stroke, tolerance))];
}

/** The line on the grid. A ring's last point is not its first. */
function flatten(
  { start, segments, closed }: Subpath,
  { scale, tolerance, count }: StrokeGrid,
  where: string,
): FlatLine {
  const points: GridPath = toGrid({ tile: 0, scale }, [start]);
  const joints = new Set<number>(closed ? [0] : []);
  for (const segment of segments) {
    const more: readonly Point2[] = flattenPathSegment(segment, (tolerance * FINER) / scale, where);
    count(more.length);
    for (const point of toGrid({ tile: 0, scale }, more)) {
      const last = points[points.length - 1];
      if (last.x !== point.x || last.y !== point.y) points.push(point);
    }
    joints.add(points.length - 1);
  }
  const last = points[points.length - 1];
  if (closed && points.length > 1 && last.x === points[0].x && last.y === points[0].y) {
    joints.delete(points.length - 1);
    points.pop();
  }
  return { points, joints };
}

/** Joints whose turn is more than a round join within the tolerance would hide. */
function cornersOf(points: GridPath, joints: ReadonlySet<number>, closed: boolean, width: number, tolerance: number) {
  return [...joints]
    .filter((at) => closed || (at > 0 && at < points.length - 1))
    .filter((at) => {
      const [before, after] = directionsAt(points, at);
      const half = Math.acos(Math.max(-1, Math.min(1, before[0] * after[0] + before[1] * after[1]))) / 2;
      return (width / 2) * (1 / Math.cos(half) - 1) > tolerance;
    })
    .sort((a, b) => a - b);
}

/** Unit directions into and out of a point; around the end where the line is a ring. */
function directionsAt(points: GridPath, at: number): readonly [Point2, Point2] {
  const count = points.length;
  const here = points[at];
  return [direction(points[(at + count - 1) % count], here), direction(here, points[(at + 1) % count])];
}

function direction(from: GridPoint, to: GridPoint): Point2 {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  return [dx / length, dy / length];
}

function splitLine(points: GridPath, corners: readonly number[]): GridPath[] {
  const ends = [0, ...corners, points.length - 1];
  return ends.slice(1).map((end, i) => points.slice(ends[i], end + 1));
}

function splitRing(points: GridPath, corners: readonly number[]): GridPath[] {
  const around = [...points, ...points, points[0]];
  return corners.map((from, i) => {
    const to = i + 1 < corners.length ? corners[i + 1] : corners[0] + points.length;
    return around.slice(from, to + 1);
  });
}

/** What a join adds outside the corner: a triangle, with the miter's tip on it where the limit allows. */
function wedge(points: GridPath, at: number, half: number, { join, miterLimit }: Stroke): GridPath {
  const [before, after] = directionsAt(points, at);
  const turn = before[0] * after[1] - before[1] * after[0];
  // The outer side is on the right of a left turn.
  const side = turn > 0 ? half : -half;
  const { x, y } = points[at];
  const [p, q]: [Point2, Point2] = [
    [before[1] * side, -before[0] * side],
    [after[1] * side, -after[0] * side],
  ];
  const cosine = before[0] * after[0] + before[1] * after[1];
  // Miter length over stroke width is 1 / sin(θ / 2), θ being the angle between the sides: √(2 / (1 + cos turn)).
  const reaches = join === "miter" && Math.sqrt(2 / (1 + cosine)) <= miterLimit;
  const tip: Point2[] = reaches ? [[(p[0] + q[0]) / (1 + cosine), (p[1] + q[1]) / (1 + cosine)]] : [];
  return [[0, 0] as Point2, p, ...tip, q].map(([dx, dy]) => ({ x: Math.round(x + dx), y: Math.round(y + dy) }));
}

/** Caps of an open line: what lies beyond its two ends. */
function capsOf(points: GridPath, width: number, { cap }: Stroke, tolerance: number): GridRegion {
  if (cap === "butt") return [];
  const ends: [GridPoint, GridPoint][] = [
    [points[1], points[0]],
    [points[points.length - 2], points[points.length - 1]],
  ];
  const outline = cap === "round" ? halfDisc(width / 2, tolerance) : halfSquare(width / 2);
  return ends.map(([from, end]) => place(outline, end, direction(from, end)));
}

/** A line without length: a disc or a square by its caps, nothing with butt ends. */
function dot(
  { at, facing = [1, 0] }: { readonly at: GridPoint; readonly facing?: Point2 | undefined },
  width: number,
  { cap }: Stroke,
  tolerance: number,
): GridRegion {
  if (cap === "butt") return [];
  const outline = cap === "round" ? halfDisc(width / 2, tolerance) : halfSquare(width / 2);
  return [place(outline, at, facing), place(outline, at, [-facing[0], -facing[1]])];
}

/** Half a disc about the origin, on the side of +x, counter-clockwise. */
function halfDisc(radius: number, tolerance: number): Point2[] {
  const count = chordCount(radius, TURN / 2, tolerance);
  return Array.from({ length: count + 1 }, (_, i): Point2 => {
    const angle = (TURN / 2) * (i / count) - TURN / 4;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

function halfSquare(half: number): Point2[] {
  return [
    [0, -half],
    [half, -half],
    [half, half],
    [0, half],
  ];
}

/** An outline moved to a point, its +x along a direction. */
function place(outline: readonly Point2[], at: GridPoint, [dx, dy]: Point2): GridPath {
  return outline.map(([x, y]) => ({ x: Math.round(at.x + x * dx - y * dy), y: Math.round(at.y + x * dy + y * dx) }));
}

/** A wedge counter-clockwise, as the ribbons are, so that they add up. */
function leftHanded(ring: GridPath): GridPath {
  return ringArea(ring) < 0 ? [...ring].reverse() : ring;
}
