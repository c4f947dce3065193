/**
 * What settings make of a column: every place along it is asked of the bodies near it, in the order of work.
 */
import type { Band } from "../../../band/band.js";
import type { Point3 } from "../../../base/math/point.js";
import { TURN } from "../../../base/units.js";
import type { Bead } from "../../../beads/bead.js";
import type { PlacedStone } from "../../../stones/placed-stone.js";
import { type Stand, sectionCrossings } from "../columns.js";
import type { Held } from "../held.js";
import { type Intervals, lessOne, withOne } from "../intervals.js";
import type { Axis } from "./posts.js";
import { type Line, pieceSpan, type Span } from "./span.js";
import { StoneView } from "./stone-view.js";
import { tellGroup, type Untold } from "./tell-group.js";
import { type Through, throughSpace } from "./through.js";
import { BEADS_NEAR, ROOM } from "./told.js";
import type { ToldBody } from "./told-body.js";

export interface ToldStonesOptions {
  readonly band: Band;
  readonly stones: readonly PlacedStone[];
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
}

/** Bodies lie within so many tolerances of what is told, and a little more, mm. */
const TOLERANCES = 1;
const MORE = 0.004;

/** Angles are sorted into so many boxes. */
const BOXES = 256;

export class ToldStones {
  /** How high the highest setting reaches above the surface, mm. */
  readonly tallest: number;
  /** Where grains and prongs stand. */
  get posts(): readonly Point3[] {
    return this.#bodies.flatMap(({ post }) => (post === undefined ? [] : [post]));
  }

  /** The stones themselves, and the height of the bore under each in its own coordinates. */
  readonly views: readonly StoneView[];
  readonly bores: readonly number[];
  /** Where grains or prongs stand, each with the stones that it holds. */
  readonly axes: readonly Axis[];
  readonly #bodies: readonly ToldBody[];
  readonly #untold: readonly Untold[];
  readonly #boxes: readonly (readonly number[])[];
  readonly #untoldBoxes: readonly (readonly number[])[];
  readonly #grown: number;

  constructor({ band, stones, tolerance }: ToldStonesOptions) {
    this.#grown = TOLERANCES * tolerance + MORE;
    const seen = stones.map((placed) => {
      const view = new StoneView(placed, tolerance);
      return { view, bore: boreUnder(placed, band) };
    });
    this.views = seen.map(({ view }) => view);
    this.bores = seen.map(({ bore }) => bore);
    const groups = [...new Set(stones.map(({ group }) => group))].map((group) =>
      tellGroup(seen.filter(({ view }) => view.placed.group === group)),
    );
    this.#bodies = groups.flatMap(({ bodies }) => bodies);
    this.#untold = groups.flatMap(({ untold }) => untold);
    this.axes = groups.flatMap(({ axes = [] }) => axes);
    this.#boxes = boxesOf(this.#bodies.map(({ sphere }) => sphere));
    this.#untoldBoxes = boxesOf(this.#untold);
    this.tallest = Math.max(0, ...stones.map(tallestOf));
  }

  /** Whether all that settings make of a column is told. */
  knows(angle: number, stand: Stand): boolean {
    const near = this.#untoldBoxes[boxAt(angle)];
    if (near.length === 0) return true;
    const { start, way } = throughSpace(angle, stand);
    const at = stand.band[stand.band.length - 1] ?? 0;
    const [x, y, z] = start;
    const middle: Point3 = [x + at * way[0], y + at * way[1], z + at * way[2]];
    return near.every((i) => {
      const { centre, radius } = this.#untold[i];
      return besideLine(centre, middle, way) > radius;
    });
  }

  /** A column with settings, as far as they are told. */
  on(held: Held, angle: number, stand: Stand): Held {
    const low = (held.maybe[0] ?? 0) - BEYOND_BORE;
    const high = Math.max(held.maybe.at(-1) ?? 0, this.tallest) + BEYOND_TOP;
    const near = this.#near(throughSpace(angle, stand), low, high);
    if (near.length === 0) return held;
    const g = this.#grown;
    return {
      surely: worked(held.surely, near, -g, g),
      likely: worked(held.likely, near, 0, 0),
      maybe: worked(held.maybe, near, g, -g),
    };
  }

  /** The bodies that a column may meet. */
  near(angle: number, { point, way, band }: Stand): readonly Near[] {
    const low = (band[0] ?? 0) - BEYOND_BORE;
    const high = Math.max(band.at(-1) ?? 0, 0) + this.tallest + BEYOND_TOP;
    return this.#near(throughSpace(angle, { point, way }), low, high);
  }

  /** Whether a bead would reach into a stone's hollow, so that it is left out. */
  clears({ centre, radius }: Bead): boolean {
    return this.views.some((view) => {
      const { placed, band, pavilion, length, width } = view;
      const far = Math.hypot(...centre.map((x, k) => x - placed.at[k]));
      if (far > Math.hypot(length, width) + pavilion + radius + FAR_BORDER) return false;
      const [x, y, z] = view.local(centre);
      const border = placed.setting.form === "bead-set" ? placed.setting.border : 0;
      return z + radius >= -band - pavilion && view.outside(x, y) < radius + ROOM + border + BEADS_NEAR;
    });
  }

  /** The bodies that a column may meet, and from where to where of what is asked. */
  #near(through: Through, low: number, high: number): Near[] {
    const { angle, start, way } = through;
    const found: Near[] = [];
    for (const i of this.#boxes[boxAt(angle)]) {
      const body = this.#bodies[i];
      let [from, to] = [low, high];
      if (body.sphere !== undefined) {
        const { centre, radius } = body.sphere;
        const beside = besideLine(centre, start, way);
        if (beside >= radius || passesBy(body, start, way)) continue;
        const t = (centre[0] - start[0]) * way[0] + (centre[1] - start[1]) * way[1] + (centre[2] - start[2]) * way[2];
        const half = Math.sqrt(radius * radius - beside * beside);
        [from, to] = [Math.max(low, t - half), Math.min(high, t + half)];
      }
      const line = to > from ? body.line(through) : undefined;
      if (line !== undefined) found.push({ body, line, from, to });
    }
    return found;
  }
}

/** What bodies leave of a set along a column, told exactly, and with all of them smaller or larger by so many mm. */
export function leftBy(near: readonly Near[], set: Intervals, by: number) {
  return { likely: worked(set, near, 0, 0), least: worked(set, near, -by, by), most: worked(set, near, by, -by) };
}

/** A body beside a column: the column in its coordinates, and from where to where it may go through it. */
export interface Near {
  readonly body: ToldBody;
  readonly line: Line;
  readonly from: number;
  readonly to: number;
}

/** What is left of a set once all is worked on it, what is added and what is cut each grown by so many mm. */
function worked(set: Intervals, near: readonly Near[], adds: number, cuts: number): Intervals {
  let left = set;
  for (const kind of IN_ORDER) {
    const adding = kind === "walls" || kind === "grains";
    for (const { body, line, from, to } of near) {
      if (body.kind !== kind) continue;
      for (const piece of body.pieces(adding ? adds : cuts)) {
        pieceSpan(piece, line, { from, to }, met);
        if (met.to > met.from) left = adding ? withOne(left, met.from, met.to) : lessOne(left, met.from, met.to);
      }
    }
  }
  return left;
}

const IN_ORDER = ["clears", "walls", "hollows", "grains"] as const satisfies readonly ToldBody["kind"][];

/** What of a column lies in the piece that was asked last. */
const met: Span = { from: 0, to: 0 };

/** Beyond the metal of a column nothing is asked but so far, mm: clear of what its facets leave open. */
const BEYOND_BORE = 0.1;
const BEYOND_TOP = 0.3;

/** A bright cut is no wider, mm (the document's limit). */
const FAR_BORDER = 3;

function tallestOf({ level, stone, setting }: PlacedStone): number {
  const { crownHeight } = stone.proportions;
  const crown = crownHeight * stone.width;
  const over =
    setting.form === "prongs"
      ? Math.max(setting.height * crown, 0.3) + 0.5
      : setting.form === "channel"
        ? setting.rise
        : crown;
  return Math.max(
    level - crown + over,
    setting.form === "channel" ? setting.rise : 0,
    setting.form === "bead-set" ? stone.width * setting.grain : 0,
  );
}

/** mm from a point to a line. */
function besideLine([x, y, z]: Point3, [ax, ay, az]: Point3, [dx, dy, dz]: Point3): number {
  const t = (x - ax) * dx + (y - ay) * dy + (z - az) * dz;
  return Math.hypot(x - ax - t * dx, y - ay - t * dy, z - az - t * dz);
}

/** Whether a line stays farther from a body's axis than the body reaches. */
function passesBy({ axis }: ToldBody, [ax, ay, az]: Point3, [dx, dy, dz]: Point3): boolean {
  if (axis === undefined) return false;
  const { at, out, radius } = axis;
  const [x, y, z] = [ax - at[0], ay - at[1], az - at[2]];
  const [nx, ny, nz] = [dy * out[2] - dz * out[1], dz * out[0] - dx * out[2], dx * out[1] - dy * out[0]];
  const sine = Math.hypot(nx, ny, nz);
  if (sine > PARALLEL) return Math.abs(x * nx + y * ny + z * nz) / sine > radius;
  return besideLine([ax, ay, az], at, out) > radius;
}

/** Lines that lean towards each other by less are parallel, as a sine. */
const PARALLEL = 1e-6;

function boxAt(angle: number): number {
  return Math.floor((((angle % TURN) + TURN) % TURN) / (TURN / BOXES)) % BOXES;
}

/** For each box of angles the numbers of what reaches into it; what has no ball reaches into all. */
function boxesOf(balls: readonly (Untold | undefined)[]): number[][] {
  const boxes: number[][] = Array.from({ length: BOXES }, () => []);
  balls.forEach((ball, i) => {
    const reach =
      ball === undefined ? Math.PI : Math.asin(Math.min(1, ball.radius / Math.hypot(ball.centre[0], ball.centre[1])));
    const angle = ball === undefined ? Math.PI : Math.atan2(ball.centre[1], ball.centre[0]) + TURN;
    const last = Math.min(
      BOXES - 1 + Math.floor(((angle - reach) / TURN) * BOXES),
      Math.floor(((angle + reach) / TURN) * BOXES),
    );
    for (let box = Math.floor(((angle - reach) / TURN) * BOXES); box <= last; box++)
      boxes[((box % BOXES) + BOXES) % BOXES].push(i);
  });
  return boxes;
}

/** Height of the bore under a stone in its own coordinates, along its axis. */
function boreUnder({ at, out }: PlacedStone, band: Band): number {
  const angle = Math.atan2(at[1], at[0]);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const { polyline } = band.sectionAt(angle);
  const [first] = sectionCrossings(
    polyline,
    [at[2], Math.hypot(at[0], at[1])],
    [out[2], out[0] * cos + out[1] * sin],
  ).filter((t) => t > -Math.hypot(at[0], at[1]));
  return first ?? 0;
}
