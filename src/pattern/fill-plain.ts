/**
 * The plain zone of a channel filled up to its rails: one body from one end of the pattern round the back to the other, whose
 * top is a level band between the rails' tops, whatever the floor is.
 *
 * It stands upright, a tolerance below the rails' tops so that no face lies in another, and goes on beneath their rounded
 * edges. To the pattern and its ornaments it is lapped, as regions are that meet.
 */
import type { Band } from "../band/band.js";
import { type Fit, FULL_COVER } from "../band/fit/fit.js";
import { laneFits } from "../band/fit/fit-lanes.js";
import { makeLine } from "../band/surface/line.js";
import type { SurfaceLine } from "../band/surface/surface.js";
import { AnnuletError } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { showLength } from "../base/units.js";
import { lanesOf } from "../design/lanes.js";
import { LAP } from "../design/pattern/compose.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { FlatBody } from "../relief/flat-body.js";

/** How far it goes on into a rail beyond the rounded edge, mm, and the most of the rail's flat top that it takes. Chosen. */
const INTO_RAIL = 0.05;
const RAIL_SHARE = 0.5;

/** Less than this is not filled, mm: it could not be cast. Chosen. */
const LEAST_FILLING = 0.05;

/** Strips across a floor that is round: of a crown as high as the rails of 0.5 mm each is flat to 1 µm. Chosen. */
const STRIPS = 32;

/**
 * The filling; undefined where the plain zone is left open.
 *
 * @param tolerance largest chordal deviation of bodies, mm
 * @throws AnnuletError `cannot-fill` on a band without rails, on one that tapers, where the floor reaches up to the rails,
 *   and where ornaments leave nothing
 */
export function fillPlain(
  spec: PatternSpec,
  fit: Fit,
  band: Pick<Band, "rails" | "seat" | "seatLength" | "revolved">,
  tolerance: number,
): FlatBody | undefined {
  if (spec.plain !== "filled") return undefined;
  const { rails, revolved, seat, seatLength } = band;
  if (rails === undefined) throw cannotFill("beside the pattern stand no two rails", "a channel band");
  if (!revolved) throw cannotFill("the rails change round the finger", "a band that does not taper");
  const line = makeLine(seat);
  const [from, to] = plainZone(spec, fit, seatLength);
  const [low, high] = rails.faces;
  const into = Math.min(INTO_RAIL, RAIL_SHARE * (low[1] - low[0]));
  const ends = [acrossAt(line, low[1] - into), acrossAt(line, high[0] + into)] as const;
  const heights = placesAcross(line, ends).map((v) => [v, heightUpTo(rails.top - tolerance, line, v)] as const);
  const least = heights.reduce((lowest, [, height]) => Math.min(lowest, height), Number.POSITIVE_INFINITY);
  if (least < LEAST_FILLING) {
    throw cannotFill(
      `the floor comes within ${showLength(least)} of the rails' tops`,
      `at least ${showLength(LEAST_FILLING)} to fill`,
    );
  }
  return bodyOf([from, to], heights);
}

/** From u to u, mm: what the pattern and its ornaments leave, and the lap at either end. */
function plainZone(spec: PatternSpec, fit: Fit, seatLength: number): readonly [number, number] {
  const covered = fit.repeats * fit.tileWidth;
  const round = (covered * FULL_COVER) / fit.cover;
  const fits = laneFits(fit, seatLength);
  const ornaments = lanesOf(spec).map(({ ends }, i) =>
    ends?.form === "ornament" ? ends.tiles * fits[i].tileWidth : 0,
  );
  const beyond = Math.max(...ornaments) - LAP;
  const [from, to] = [covered + beyond, round - beyond];
  if (to - from < LEAST_FILLING)
    throw cannotFill("the ornaments leave nothing of the plain zone", "narrower ornaments");
  return [from, to];
}

/** v of a place at w on the seat, or beyond it where the seat's line goes on straight. */
function acrossAt(line: SurfaceLine, w: number): number {
  const side = Math.sign(w);
  const [end] = line.point(side * line.reach, 0);
  return side * line.reach + (w - end) / line.normal(side * line.reach)[1];
}

/** Places across, from end to end: two where the floor is level. */
function placesAcross(line: SurfaceLine, [low, high]: readonly [number, number]): number[] {
  const level = [-line.reach, 0].every((v) => line.normal(v)[1] === 1);
  if (level) return [low, high];
  const within = Array.from({ length: STRIPS + 1 }, (_, i) => line.reach * ((2 * i) / STRIPS - 1));
  return [low, ...within, high];
}

/** Height of an upright body over v whose top lies at a radius, mm. */
function heightUpTo(radius: number, line: SurfaceLine, v: number): number {
  return (radius - line.point(v, 0)[1]) * line.normal(v)[1];
}

function bodyOf(
  [from, to]: readonly [number, number],
  heights: readonly (readonly [v: number, height: number])[],
): FlatBody {
  const at = (u: number) => heights.map(([v, h]): Point3 => [u, v, h]);
  const [left, right] = [at(from), at(to)];
  const top = left.slice(1).map((_, i) => [[left[i], right[i], right[i + 1], left[i + 1]]]);
  return {
    mode: "raised",
    names: ["plain zone"],
    path: "pattern.plain",
    made: "filling",
    upright: true,
    top,
    surface: undefined,
    outline: [[[...right, ...left.toReversed()]]],
    throat: [],
    seam: undefined,
    period: undefined,
    copies: 1,
    height: heights.reduce((most, [, height]) => Math.max(most, height), 0),
    rise: undefined,
    fade: undefined,
    filling: true,
  };
}

function cannotFill(why: string, allowed: string): AnnuletError {
  return new AnnuletError({
    code: "cannot-fill",
    message: `the plain zone cannot be filled: ${why}`,
    path: "pattern.plain",
    value: "filled",
    allowed: `"open"; "filled" wants ${allowed}`,
  });
}
