/**
 * SVG path data, all commands, as exact curves, and flattened to a tolerance.
 *
 * SVG 1.1 (Second Edition), chapter 8: relative commands, reflected control points, implicit closing, and appendix F.6
 * for arcs (see elliptic-arc.ts). The text itself is parsed by svg-pathdata; its conversion of arcs is not used.
 */
import { SVGPathData } from "svg-pathdata";
import { AnnuletError } from "../errors.js";
import { radians } from "../units.js";
import { type Cubic, cubicChordCount, cubicFromQuadratic, flattenCubic } from "./bezier.js";
import { chordCount, divideSegment, type Segment } from "./curve.js";
import { arcFromEndpoints, divideEllipse, type EllipticArc } from "./elliptic-arc.js";
import type { Point2 } from "./point.js";

/** One piece of a path. Quadratics are given as the cubics they equal, circular arcs as `Arc`. */
export type PathSegment = Segment | Cubic | EllipticArc;

/** A run of pieces from one move to the next. */
export interface Subpath {
  readonly start: Point2;
  readonly segments: readonly PathSegment[];
  /** Whether it ends in Z. The closing line is among the segments where it has a length. */
  readonly closed: boolean;
}

/** A flattened subpath. Closed: the last point is not the first again. */
export interface FlatSubpath {
  readonly points: Point2[];
  readonly closed: boolean;
}

/** The same path moved, as text; one that cannot be read is returned as it is, for those who read it to complain. */
export function translatePath(d: string, dx: number, dy: number): string {
  try {
    return new SVGPathData(d).toAbs().translate(dx, dy).encode();
  } catch {
    return d;
  }
}

export interface FlattenPathOptions {
  /** Factor on every coordinate; the tolerance is in the scaled unit. Default 1. */
  readonly scale?: number;
  /** Where the text stands in the document, for errors. Default: not said. */
  readonly path?: string;
}

export interface ReadPathOptions {
  /** Whether a subpath whose pieces have no length is kept, as one without pieces: strokes cap it. Default false. */
  readonly dots?: boolean;
}

/** Two points nearer than this part of the path's largest coordinate are one: rounding of relative commands. */
const SAME_POINT = 1e-12;

/**
 * Reads SVG path data into exact curves. Coordinates are left as they are: y is not turned over.
 * Moves that draw nothing, and pieces without length, are left out.
 *
 * @param d the path's text
 * @param path where it stands in the document, for errors
 * @throws AnnuletError `path-malformed` for a text that is no path, with the position where known;
 *   `path-not-finite` where a number is too large for arithmetic
 */
export function readPathData(d: string, path?: string, { dots = false }: ReadPathOptions = {}): Subpath[] {
  const pen = new Pen(dots);
  for (const command of parse(d, path)) pen.draw(command);
  const subpaths = pen.finish();
  const finite = subpaths.every(({ segments }) => segments.every(hasFiniteNumbers));
  if (!finite || !Number.isFinite(pen.reach)) {
    throw new AnnuletError({
      code: "path-not-finite",
      message: "the path holds a number too large to draw with",
      path,
      value: d,
      allowed: "finite coordinates",
    });
  }
  return subpaths;
}

/**
 * Reads SVG path data as polylines, no chord further than `tolerance` from the true curve.
 *
 * @param d the path's text
 * @param tolerance largest chordal deviation, in the scaled unit, above 0
 * @throws as `readPathData` and `flattenPathSegment`
 */
export function flattenPath(d: string, tolerance: number, options: FlattenPathOptions = {}): FlatSubpath[] {
  const { scale = 1, path } = options;
  return readPathData(d, path).map((subpath) => {
    const points = flattenSubpath(subpath, tolerance / Math.abs(scale), path);
    return { points: points.map(([x, y]): Point2 => [x * scale, y * scale]), closed: subpath.closed };
  });
}

/** The points of one subpath, start first; if it is closed, the last point is not the first again. */
export function flattenSubpath(subpath: Subpath, tolerance: number, path?: string): Point2[] {
  const points: Point2[] = [subpath.start];
  for (const segment of subpath.segments) points.push(...flattenPathSegment(segment, tolerance, path));
  const reach = points.reduce((most, [x, y]) => Math.max(most, Math.abs(x), Math.abs(y)), 0);
  if (subpath.closed && points.length > 1 && same(points[0], points[points.length - 1], reach)) points.pop();
  return points;
}

/** Most chords that one piece of a path may take: hundreds of times what a motif of 1 mm needs at 0.001 mm. Chosen. */
const MOST_CHORDS = 20_000;

/**
 * The points of one piece after its start, up to and with its end, within `tolerance` of the curve.
 *
 * @param path where the path stands in the document, for errors
 * @throws AnnuletError `path-too-fine` where that would take more than 20 000 chords
 */
export function flattenPathSegment(segment: PathSegment, tolerance: number, path?: string): Point2[] {
  const count = pathChordCount(segment, tolerance);
  // Written so that a count that is no number is refused too.
  if (!(count <= MOST_CHORDS)) {
    throw new AnnuletError({
      code: "path-too-fine",
      message: `a piece of the path would take ${count} chords to stay within ${tolerance} of its curve`,
      path,
      value: count,
      allowed: `at most ${MOST_CHORDS} chords a piece`,
      hint: "draw it smaller, or allow a larger tolerance",
    });
  }
  switch (segment.kind) {
    case "cubic":
      return flattenCubic(segment, tolerance);
    case "ellipse":
      return divideEllipse(segment, count);
    default:
      return divideSegment(segment, count);
  }
}

function pathChordCount(segment: PathSegment, tolerance: number): number {
  switch (segment.kind) {
    case "line":
      return 1;
    case "arc":
      return roundChordCount(segment.radius, segment.sweep, tolerance);
    case "ellipse":
      return roundChordCount(Math.max(...segment.radii), segment.sweep, tolerance);
    case "cubic":
      return cubicChordCount(segment, tolerance);
  }
}

/**
 * A circle of the larger radius, squeezed along one axis, is the ellipse: distances only shrink, so its count is enough.
 * Each chord spans a quarter turn at most, so that a circle smaller than the tolerance still encloses something.
 */
function roundChordCount(radius: number, sweep: number, tolerance: number): number {
  return Math.max(chordCount(radius, sweep, tolerance), Math.ceil(Math.abs(sweep) / (Math.PI / 2) - QUARTER_SLACK));
}

/** Quarters of a turn by which rounding may lengthen a sweep. */
const QUARTER_SLACK = 1e-9;

type Command = ReturnType<typeof SVGPathData.parse>[number];
type ArcCommand = Extract<Command, { readonly type: typeof SVGPathData.ARC }>;

function parse(d: string, path: string | undefined): Command[] {
  const fail = (message: string, cause?: unknown) =>
    new AnnuletError(
      {
        code: "path-malformed",
        message,
        path,
        value: d,
        allowed: "SVG path data that begins with M, e.g. M 0 0 L 1 0 L 1 1 Z",
      },
      { cause },
    );
  let commands: Command[];
  try {
    commands = SVGPathData.parse(d);
  } catch (error) {
    throw fail(`the path cannot be read: ${describe(error, d)}`, error);
  }
  if (commands.length === 0) throw fail("the path is empty");
  if (commands[0].type !== SVGPathData.MOVE_TO) throw fail("the path does not begin with a move (M), at position 1");
  return commands;
}

/** The parser's own sentence, its index (from 0) as a position from 1. */
function describe(error: unknown, d: string): string {
  const text = error instanceof Error ? error.message : String(error);
  const index = /(?:index|at) "?(\d+)"?/.exec(text)?.[1];
  const position = index === undefined ? d.length : Math.min(Number(index) + 1, d.length);
  const plain = text.replace(/,? ?(?:ending )?at (?:index )?"?\d+"?/, "").replace(/\.$/, "");
  return `${plain}, at position ${position}`;
}

/** Follows the commands with a current point, and collects what they draw. */
class Pen {
  private readonly subpaths: Subpath[] = [];
  private start: Point2 = [0, 0];
  private at: Point2 = [0, 0];
  private segments: PathSegment[] = [];
  /** The largest coordinate met, without its sign. */
  reach = 0;
  private readonly dots: boolean;

  constructor(dots: boolean) {
    this.dots = dots;
  }

  /** Whether anything was drawn since the last move, even without length. */
  private touched = false;
  /** The last control point, for S after C or S, and T after Q or T. */
  private control: { readonly of: "cubic" | "quadratic"; readonly point: Point2 } | undefined;

  private arc(command: ArcCommand): void {
    const to = this.place(command, command.x, command.y);
    const radii: Point2 = [Math.abs(command.rX), Math.abs(command.rY)];
    if (radii[0] === 0 || radii[1] === 0 || this.isHere(to)) {
      this.line(to);
      return;
    }
    const arc = arcFromEndpoints({
      from: this.at,
      to,
      radii,
      turn: radians(command.xRot),
      large: command.lArcFlag === 1,
      positive: command.sweepFlag === 1,
    });
    this.push(arc, to);
  }

  draw(command: Command): void {
    const control = this.control;
    this.control = undefined;
    if (command.type !== SVGPathData.MOVE_TO) this.touched = true;
    switch (command.type) {
      case SVGPathData.CLOSE_PATH:
        this.line(this.start);
        this.endSubpath(true);
        return;
      case SVGPathData.MOVE_TO: {
        const to = this.place(command, command.x, command.y);
        this.endSubpath(false);
        this.start = to;
        this.at = to;
        return;
      }
      case SVGPathData.LINE_TO:
        this.line(this.place(command, command.x, command.y));
        return;
      case SVGPathData.HORIZ_LINE_TO:
        this.line([this.place(command, command.x, 0)[0], this.at[1]]);
        return;
      case SVGPathData.VERT_LINE_TO:
        this.line([this.at[0], this.place(command, 0, command.y)[1]]);
        return;
      case SVGPathData.CURVE_TO:
        this.cubic(
          this.place(command, command.x1, command.y1),
          this.place(command, command.x2, command.y2),
          this.place(command, command.x, command.y),
        );
        return;
      case SVGPathData.SMOOTH_CURVE_TO:
        this.cubic(
          control?.of === "cubic" ? this.reflect(control.point) : this.at,
          this.place(command, command.x2, command.y2),
          this.place(command, command.x, command.y),
        );
        return;
      case SVGPathData.QUAD_TO:
        this.quadratic(this.place(command, command.x1, command.y1), this.place(command, command.x, command.y));
        return;
      case SVGPathData.SMOOTH_QUAD_TO:
        this.quadratic(
          control?.of === "quadratic" ? this.reflect(control.point) : this.at,
          this.place(command, command.x, command.y),
        );
        return;
      case SVGPathData.ARC:
        this.arc(command);
        return;
    }
  }

  finish(): Subpath[] {
    this.endSubpath(false);
    return this.subpaths;
  }

  private endSubpath(closed: boolean): void {
    if (this.segments.length > 0 || (this.dots && this.touched)) {
      this.subpaths.push({ start: this.start, segments: this.segments, closed });
    }
    this.touched = false;
    this.segments = [];
    this.at = this.start;
  }

  private place(command: { readonly relative: boolean }, x: number, y: number): Point2 {
    const place: Point2 = command.relative ? [this.at[0] + x, this.at[1] + y] : [x, y];
    this.reach = Math.max(this.reach, Math.abs(place[0]), Math.abs(place[1]));
    return place;
  }

  private reflect(control: Point2): Point2 {
    return [2 * this.at[0] - control[0], 2 * this.at[1] - control[1]];
  }

  private isHere(to: Point2): boolean {
    return same(this.at, to, this.reach);
  }

  private push(segment: PathSegment, to: Point2): void {
    this.segments.push(segment);
    this.at = to;
  }

  private line(to: Point2): void {
    if (!this.isHere(to)) this.push({ kind: "line", from: this.at, to }, to);
  }

  private cubic(first: Point2, second: Point2, to: Point2): void {
    if (!(this.isHere(first) && this.isHere(second) && this.isHere(to))) {
      this.push({ kind: "cubic", points: [this.at, first, second, to] }, to);
    }
    this.control = { of: "cubic", point: second };
  }

  private quadratic(control: Point2, to: Point2): void {
    if (!(this.isHere(control) && this.isHere(to))) this.push(cubicFromQuadratic(this.at, control, to), to);
    this.control = { of: "quadratic", point: control };
  }
}

function same(a: Point2, b: Point2, reach: number): boolean {
  return Math.abs(a[0] - b[0]) <= SAME_POINT * reach && Math.abs(a[1] - b[1]) <= SAME_POINT * reach;
}

function hasFiniteNumbers(segment: PathSegment): boolean {
  switch (segment.kind) {
    case "line":
      return allFinite([...segment.from, ...segment.to]);
    case "arc":
      return allFinite([...segment.centre, segment.radius, segment.start, segment.sweep]);
    case "ellipse":
      return allFinite([...segment.centre, ...segment.radii, segment.turn, segment.start, segment.sweep]);
    case "cubic":
      return allFinite(segment.points.flat());
  }
}

function allFinite(numbers: readonly number[]): boolean {
  return numbers.every(Number.isFinite);
}
