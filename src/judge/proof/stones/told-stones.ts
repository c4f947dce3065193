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
import { type Intervals, unite, without } from "../intervals.js";
import { StoneView } from "./stone-view.js";
import { tellGroup, type Untold } from "./tell-group.js";
import { BEADS_NEAR, ROOM } from "./told.js";
import type { ToldBody } from "./told-body.js";

export interface ToldStonesOptions {
  readonly band: Band;
  readonly stones: readonly PlacedStone[];
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
}

/** Places that are asked along a column lie so far apart, mm (chosen: a grain is three times as thick), and ends are found by so many halvings of that. */
const APART = 0.06;
const HALVINGS = 9;

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

  /** The stones themselves. */
  readonly views: readonly StoneView[];
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
    const groups = [...new Set(stones.map(({ group }) => group))].map((group) =>
      tellGroup(seen.filter(({ view }) => view.placed.group === group)),
    );
    this.#bodies = groups.flatMap(({ bodies }) => bodies);
    this.#untold = groups.flatMap(({ untold }) => untold);
    this.#boxes = boxesOf(this.#bodies.map(({ sphere }) => sphere));
    this.#untoldBoxes = boxesOf(this.#untold);
    this.tallest = Math.max(0, ...stones.map(tallestOf));
  }

  /** Whether all that settings make of a column is told. */
  knows(angle: number, { point, way, band }: Stand): boolean {
    const near = this.#untoldBoxes[boxAt(angle)];
    if (near.length === 0) return true;
    const middle = spaceAt(angle, point, way, band[band.length - 1] ?? 0);
    return near.every((i) => {
      const { centre, radius } = this.#untold[i];
      return besideLine(centre, middle, direction(angle, way)) > radius;
    });
  }

  /** A column with settings, as far as they are told. */
  on(held: Held, angle: number, stand: Stand): Held {
    const near = this.#near(angle, stand);
    if (near.length === 0) return held;
    const g = this.#grown;
    const [low, high] = [
      (held.maybe[0] ?? 0) - BEYOND_BORE,
      Math.max(held.maybe.at(-1) ?? 0, this.tallest) + BEYOND_TOP,
    ];
    const of = (kind: ToldBody["kind"], grown: number) =>
      near
        .filter(({ body }) => body.kind === kind)
        .reduce<Intervals>(
          (set, { body, from, to }) =>
            unite(set, within(body, angle, stand, { from: Math.max(from, low), to: Math.min(to, high), grown })),
          [],
        );
    const worked = (set: Intervals, adds: number, cuts: number) =>
      unite(
        without(unite(without(set, of("clears", cuts)), of("walls", adds)), of("hollows", cuts)),
        of("grains", adds),
      );
    return {
      surely: worked(held.surely, -g, g),
      likely: worked(held.likely, 0, 0),
      maybe: worked(held.maybe, g, -g),
    };
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

  /** The bodies that a column meets the balls of, and from where to where. */
  #near(angle: number, { point, way }: Stand) {
    return this.#boxes[boxAt(angle)].flatMap((i) => {
      const body = this.#bodies[i];
      if (body.sphere === undefined) return [{ body, from: -ROUND_REACH, to: ROUND_REACH }];
      const { centre, radius } = body.sphere;
      const start = spaceAt(angle, point, way, 0);
      const along = direction(angle, way);
      const t = centre.reduce((sum, x, k) => sum + (x - start[k]) * along[k], 0);
      const beside = besideLine(centre, start, along);
      if (beside >= radius || passesBy(body, start, along)) return [];
      const half = Math.sqrt(radius * radius - beside * beside);
      return [{ body, from: t - half, to: t + half }];
    });
  }
}

/** Beyond the metal of a column nothing is asked but so far, mm: clear of what its facets leave open. */
const BEYOND_BORE = 0.1;
const BEYOND_TOP = 0.3;

/** A bright cut is no wider, mm (the document's limit). */
const FAR_BORDER = 3;

/** What goes round the finger is looked for so far above and below a surface, mm (chosen). */
const ROUND_REACH = 4;

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

/** What of a column lies in a body. */
function within(
  { holds }: ToldBody,
  angle: number,
  { point, way }: Stand,
  { from, to, grown }: { readonly from: number; readonly to: number; readonly grown: number },
): Intervals {
  const start = spaceAt(angle, point, way, 0);
  const along = direction(angle, way);
  const isIn = (t: number) => holds([start[0] + t * along[0], start[1] + t * along[1], start[2] + t * along[2]], grown);
  if (to <= from) return [];
  const count = Math.max(2, Math.ceil((to - from) / APART));
  const found: number[] = [];
  let inside = isIn(from);
  if (inside) found.push(from);
  for (let i = 1; i <= count; i++) {
    const t = from + ((to - from) * i) / count;
    if (isIn(t) === inside) continue;
    let [low, high] = [t - (to - from) / count, t];
    for (let k = 0; k < HALVINGS; k++) {
      const middle = (low + high) / 2;
      if (isIn(middle) === inside) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
    inside = !inside;
  }
  if (inside) found.push(to);
  return found;
}

function spaceAt(angle: number, [w, r]: Stand["point"], [dw, dr]: Stand["way"], t: number): Point3 {
  const radius = r + t * dr;
  return [radius * Math.cos(angle), radius * Math.sin(angle), w + t * dw];
}

function direction(angle: number, [dw, dr]: Stand["way"]): Point3 {
  return [dr * Math.cos(angle), dr * Math.sin(angle), dw];
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
