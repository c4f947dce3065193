/**
 * Drawing → region: every shape put in its place as exact curves, flattened there, filled or stroked, clipped, united and
 * cleaned.
 */
import { AnnuletError } from "../../base/errors.js";
import { type Affine, compose, mapPoint, mapSubpath, scaling, stretches } from "../../base/math/affine.js";
import { flattenPathSegment, type Subpath } from "../../base/math/path-data.js";
import type { Point2 } from "../../base/math/point.js";
import { AT_A_BREATH, BREATH, finish, type Pausing } from "../../base/pausing.js";
import { crossesItself } from "../../flat/crosses-itself.js";
import { type GridPath, toGrid } from "../../flat/grid.js";
import { type GridRegion, intersect, ringArea, subtract, unite } from "../../flat/polygons.js";
import type { Clip, Drawing, DrawnShape } from "./drawing.js";
import { isFlat } from "./is-flat.js";
import { refuseTangled } from "./refuse-tangled.js";
import { strokeRegion } from "./stroke.js";
import { SVG_LIMITS, tooMuch } from "./svg-limits.js";

export interface OutlineOptions {
  /** From the page, px, to mm. Flattens nothing. */
  readonly place: Affine;
  /** Grid steps in a millimetre. */
  readonly scale: number;
  /** Largest chordal deviation after placing, mm. */
  readonly tolerance: number;
  /** The file's place in the document, for errors. */
  readonly where: string;
}

/** What cleaning changed. */
export interface Cleaned {
  /** Points that fell on their neighbours. */
  readonly duplicates: number;
  /** Outlines and holes below 1e-4 mm², dropped. */
  readonly tinyLoops: number;
  /** Filled outlines that crossed themselves, united by their fill rule. */
  readonly crossings: number;
}

export interface Outline {
  /** Outer rings counter-clockwise, holes clockwise; grid steps. */
  readonly region: GridRegion;
  readonly cleaned: Cleaned;
}

/** Loops smaller than this are dropped, mm²: a square of 10 µm, far below what casting can hold. Chosen. */
const TINY_LOOP = 1e-4;

/**
 * The region that a drawing covers. Empty where clips leave nothing.
 *
 * @throws AnnuletError `svg-too-complex`, `svg-too-far`, `svg-zero-scale`, and as `flattenSubpath`
 */
export function outlineDrawing(drawing: Drawing, options: OutlineOptions): Outline {
  return finish(outliningDrawing(drawing, options));
}

/** The same in pieces: an operation on the outlines of one shape is one. */
export function* outliningDrawing(drawing: Drawing, options: OutlineOptions): Pausing<Outline> {
  const work = new Outliner(options);
  const parts: GridPath[] = [];
  for (const shape of drawing.shapes) {
    for (const ring of yield* work.shape(shape)) parts.push(ring);
    yield BREATH;
  }
  const { where, scale } = options;
  refuseTangled(parts, where);
  yield BREATH;
  const whole = drawing.shapes.length > 1 ? unite(parts) : parts;
  yield BREATH;
  const region = whole.filter((ring) => Math.abs(ringArea(ring)) >= TINY_LOOP * scale ** 2);
  return { region, cleaned: { ...work.cleaned, tinyLoops: whole.length - region.length } };
}

class Outliner {
  readonly cleaned = { duplicates: 0, tinyLoops: 0, crossings: 0 };
  readonly #options: OutlineOptions;
  readonly #clips = new Map<Clip, GridRegion>();
  #points = 0;

  constructor(options: OutlineOptions) {
    this.#options = options;
  }

  /** What shows of a shape. */
  *shape(shape: DrawnShape): Pausing<GridRegion> {
    const fill = shape.fill === undefined ? [] : yield* this.#fill(shape);
    const stroke = shape.stroke === undefined ? [] : this.#stroke(shape);
    let left: GridRegion = fill.length > 0 && stroke.length > 0 ? unite([...fill, ...stroke]) : [...fill, ...stroke];
    for (const clip of shape.clips) left = yield* this.#clipped(left, clip);
    return left;
  }

  *#fill(shape: DrawnShape): Pausing<GridRegion> {
    const { tolerance, scale, where } = this.#options;
    const map = this.#mapOf(shape);
    const rings: GridPath[] = [];
    for (const subpath of shape.subpaths) {
      const ring = this.#toGrid(this.#flatten(mapSubpath(map, subpath), tolerance), scale, shape);
      if (ring.length >= 3) rings.push(ring);
      if (ring.length > AT_A_BREATH) yield BREATH;
    }
    refuseTangled(rings, where);
    yield BREATH;
    const united = unite(rings, shape.fill);
    const alone = rings.length === 1 && shape.fill !== "evenodd" ? united : undefined;
    for (const ring of rings) {
      yield BREATH;
      if (crossesItself(ring, alone)) this.cleaned.crossings++;
    }
    return united;
  }

  #stroke(shape: DrawnShape): GridRegion {
    const { tolerance, scale, where } = this.#options;
    const { subpaths, stroke } = shape;
    if (stroke === undefined) return [];
    const map = this.#mapOf(shape);
    const own = stretches(map)[0] * scale;
    const grid = { scale: own, tolerance: tolerance * scale, count: (points: number) => this.#count(points) };
    const far = subpaths.some(({ start }) => !(Math.hypot(...mapPoint(map, start)) < SVG_LIMITS.reach));
    if (far || !(stroke.width * own < SVG_LIMITS.reach * scale)) throw tooFar(shape, where);
    const region = strokeRegion(subpaths, stroke, grid, where);
    for (const ring of region) this.#count(ring.length);
    const toPlace = compose(map, scaling(1 / own, 1 / own));
    const placed = region.map((ring) =>
      this.#toGrid(
        ring.map(({ x, y }) => mapPoint(toPlace, [x, y])),
        scale,
        shape,
      ),
    );
    const mirrored = map[0] * map[3] - map[1] * map[2] < 0;
    return unite(mirrored ? placed.map((ring) => ring.reverse()) : placed);
  }

  /** The part of a region inside a clip; the region itself where the clip is a box around it. */
  *#clipped(region: GridRegion, clip: Clip): Pausing<GridRegion> {
    if (region.length === 0) return region;
    const known = this.#clips.get(clip);
    const inside = known ?? (yield* this.#clipRegion(clip));
    if (known === undefined) this.#clips.set(clip, inside);
    if (isBoxAround(inside, region)) return region;
    refuseTangled([...region, ...inside], this.#options.where);
    return intersect(region, inside);
  }

  *#clipRegion(clip: Clip): Pausing<GridRegion> {
    const hides = clip.shapes.some((shape) => shape.hides);
    let left = hides ? yield* this.#painted(clip) : yield* this.#united(clip.shapes);
    for (const outer of clip.clips) left = yield* this.#clipped(left, outer);
    return left;
  }

  *#united(shapes: readonly DrawnShape[]): Pausing<GridRegion> {
    const parts: GridPath[] = [];
    for (const shape of shapes) for (const ring of yield* this.shape(shape)) parts.push(ring);
    return unite(parts);
  }

  /** A mask's shapes, each over those before it: those that follow each other to one effect at once. */
  *#painted({ shapes }: Clip): Pausing<GridRegion> {
    let below: GridRegion = [];
    for (let from = 0, to = 0; from < shapes.length; from = to) {
      const hides = shapes[from].hides === true;
      while (to < shapes.length && (shapes[to].hides === true) === hides) to++;
      const over = yield* this.#united(shapes.slice(from, to));
      const both = [...below, ...over];
      refuseTangled(both, this.#options.where);
      below = hides ? subtract(below, over) : unite(both);
    }
    return below;
  }

  #mapOf({ map, what }: DrawnShape): Affine {
    const placed = compose(this.#options.place, map);
    if (placed.every(Number.isFinite) && !isFlat(placed)) return placed;
    throw new AnnuletError({
      code: "svg-zero-scale",
      message: `${what} is scaled to nothing or beyond all measure`,
      path: this.#options.where,
      allowed: "transforms that keep a shape's width and height",
    });
  }

  #toGrid(points: readonly Point2[], scale: number, shape: DrawnShape): GridPath {
    const { reach } = SVG_LIMITS;
    if (!points.every(([x, y]) => Math.abs(x) < reach && Math.abs(y) < reach)) throw tooFar(shape, this.#options.where);
    const ring = toGrid({ tile: 0, scale }, points);
    this.cleaned.duplicates += points.length - ring.length;
    // A path that closes where it began is no repetition.
    const [first, last] = [ring[0], ring[ring.length - 1]];
    if (ring.length > 1 && first.x === last.x && first.y === last.y) ring.pop();
    return ring;
  }

  /** Points are counted as they come, so that a file made to fill the memory is refused before it does. */
  #flatten({ start, segments }: Subpath, tolerance: number): Point2[] {
    const points: Point2[] = [start];
    for (const segment of segments) {
      const more = flattenPathSegment(segment, tolerance, this.#options.where);
      this.#count(more.length);
      for (const point of more) points.push(point);
    }
    return points;
  }

  #count(points: number): void {
    this.#points += points;
    if (this.#points <= SVG_LIMITS.points) return;
    throw tooMuch(
      `comes to more than ${SVG_LIMITS.points} corners at this tolerance`,
      `at most ${SVG_LIMITS.points}`,
      this.#options.where,
    );
  }
}

function tooFar({ what }: DrawnShape, where: string): AnnuletError {
  return new AnnuletError({
    code: "svg-too-far",
    message: `${what} reaches more than ${SVG_LIMITS.reach} mm from the tile`,
    path: where,
    allowed: `within ${SVG_LIMITS.reach} mm, what the page hides too`,
    hint: "check the drawing's transforms, or place it smaller",
  });
}

/** Whether the clip is one upright rectangle that holds the region. */
function isBoxAround(clip: GridRegion, region: GridRegion): boolean {
  if (clip.length !== 1 || clip[0].length !== 4) return false;
  const [xs, ys] = [clip[0].map(({ x }) => x), clip[0].map(({ y }) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const upright = clip[0].every(({ x, y }) => (x === left || x === right) && (y === low || y === high));
  return upright && region.every((ring) => ring.every(({ x, y }) => x >= left && x <= right && y >= low && y <= high));
}
