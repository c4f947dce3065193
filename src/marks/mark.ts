/**
 * A mark: a flat region on one surface of the band, raised or sunk there once.
 */
import { AnnuletError } from "../base/errors.js";
import { extent } from "../base/math/extent.js";
import type { Pausing } from "../base/pausing.js";
import { radians, showLength, TURN } from "../base/units.js";
import { ringBox } from "../flat/box.js";
import { type Motion, STAY } from "../flat/motion.js";
import type { GridRegion } from "../flat/polygons.js";
import { makeStrip, type Strip } from "../flat/strip.js";
import { type FlatBody, moveBody } from "../relief/flat-body.js";
import { raisingRegion } from "../relief/section.js";
import type { MarkSurface } from "./mark-surface.js";

export interface Mark {
  readonly surface: MarkSurface;
  /** Over the surface: u is θ from its start angle times its reference radius. */
  readonly body: FlatBody;
  /** From u to u and from v to v, mm, its leaning walls included. */
  readonly box: Box;
}

export interface Box {
  readonly u: readonly [low: number, high: number];
  readonly v: readonly [low: number, high: number];
}

/** What must stand between a cut and its surface's edge, mm: the least wall of the profile's model, chosen. */
const EDGE_WALL = 0.1;

/** The strip of a surface: one tile all the way round, so that a region in its middle is far from both ends. */
export function surfaceStrip({ wrap }: MarkSurface, tolerance: number): Strip {
  const tileWidth = wrap.round;
  const size = {
    tileWidth,
    tileHeight: wrap.seatLength,
    repeats: 1,
    rows: 1,
    cycle: 1,
    aspect: wrap.seatLength / tileWidth,
  };
  return makeStrip({ ...size, cover: 0 }, "p1", wrap.seatLength, tolerance);
}

export interface MarkOptions {
  readonly surface: MarkSurface;
  readonly strip: Strip;
  /** Its middle's θ, degrees. */
  readonly angle: number;
  readonly mode: "raised" | "sunk";
  /** mm above or below the surface. */
  readonly height: number;
  readonly round: number;
  /** Degrees. */
  readonly draft: number;
  /** For messages: `the text "…"`. */
  readonly what: string;
  readonly path: string;
}

/**
 * Raises or sinks a region, laid about the middle of the strip, at its place round the band.
 *
 * @throws AnnuletError `mark-too-long`, `mark-too-wide`
 */
export function* makeMark(region: GridRegion, options: MarkOptions): Pausing<Mark> {
  const { surface, strip, angle, mode, height, round, draft, what, path } = options;
  const section = { form: "flat", height, round, bevel: 0, draft } as const;
  requireLength(boxOf(region, strip).u, options);
  const drawn = yield* raisingRegion(strip, region, {
    section,
    mode,
    names: [what],
    path,
    where: path,
    fade: undefined,
  });
  if (drawn === undefined) throw new Error("a region without rings was checked before");
  const body = moveBody(drawn, placeRound(surface, angle));
  const points = body.outline.flat(2);
  const range = (k: 0 | 1) => extent(points.map((point) => point[k]));
  const box = { u: range(0), v: range(1) };
  requireWidth(box.v, options);
  return { surface, body, box };
}

/** How what is laid about the middle of a strip moves to stand at an angle, degrees. */
export function placeRound({ wrap }: MarkSurface, angle: number): Motion {
  const turn = (((radians(angle) - wrap.startAngle) % TURN) + TURN) % TURN;
  return { ...STAY, u: (turn - TURN / 2) * wrap.referenceRadius };
}

/** The box round a region, mm. */
export function boxOf(region: GridRegion, { grid: { scale } }: Strip): Box {
  const { left, right, low, high } = ringBox(region.flat());
  return { u: [left / scale, right / scale], v: [low / scale, high / scale] };
}

function requireLength([low, high]: Box["u"], { surface, what, path }: MarkOptions): void {
  const { round } = surface.wrap;
  if (high - low < round - EDGE_WALL) return;
  throw new AnnuletError({
    code: "mark-too-long",
    message: `${what} is ${showLength(high - low)} long, and ${surface.what} only ${showLength(round)} round`,
    path,
    value: Number((high - low).toFixed(3)),
    allowed: `less than ${showLength(Math.floor((round - EDGE_WALL) * 1000) / 1000)}`,
    hint: `make it ${Math.floor(((round - EDGE_WALL) / (high - low)) * 100)} % of its size, or shorter`,
  });
}

function requireWidth([low, high]: Box["v"], { surface, mode, what, path }: MarkOptions): void {
  const { wrap, turned } = surface;
  const half = wrap.seatLength / 2 - (mode === "sunk" ? EDGE_WALL : 0);
  if (low >= -half && high <= half) return;
  const [from, to] = turned ? [-high, -low] : [low, high];
  throw new AnnuletError({
    code: "mark-too-wide",
    message: `${what} reaches from ${showLength(from)} to ${showLength(to)} across ${surface.what}, which has ${showLength(wrap.seatLength)}`,
    path,
    value: Number((high - low).toFixed(3)),
    allowed:
      half > 0 ? `within ${showLength(Math.floor(half * 1000) / 1000)} of its middle line` : "nothing: too narrow",
    hint: "make it smaller, move it by v, or make the band wider",
  });
}
