/**
 * The plain zone of a channel filled up to its rails: one body from one end of the pattern round the back to the other, whose
 * top is a level band between the rails' tops, whatever the floor is, and follows them where the band tapers.
 *
 * It stands upright, flush with the rails' tops, and goes on over their rounded edges into these. It is bent on the band's own
 * facets (`solids/parts.ts`), so that its top and theirs lie in the same planes and are one face once united; on others they
 * would cross along every facet. To the pattern and its ornaments it is lapped, as regions are that meet.
 */
import type { Band } from "../band/band.js";
import { type Fit, FULL_COVER } from "../band/fit/fit.js";
import { laneFits } from "../band/fit/fit-lanes.js";
import type { Rails } from "../band/profile/outline.js";
import type { BandSurface, SurfaceLine } from "../band/surface/surface.js";
import { wrapSeat } from "../band/surface/wrap-seat.js";
import { AnnuletError } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { showLength } from "../base/units.js";
import { lanesOf } from "../design/lanes.js";
import { LAP } from "../design/pattern/compose.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { FlatBody, ReliefPolygon } from "../relief/flat-body.js";

/** How far it goes on into a rail beyond the rounded edge, mm, and the most of the rail's flat top that it takes. Chosen. */
const INTO_RAIL = 0.05;
const RAIL_SHARE = 0.5;

/** Less than this is not filled, mm: it could not be cast. Chosen. */
const LEAST_FILLING = 0.05;

/** Strips across a floor that is round: of a crown as high as the rails of 0.5 mm each is flat to 1 µm. Chosen. */
const STRIPS = 32;

/**
 * Between two places along the band heights may be off by this share of the tolerance, and ends by this share of the way
 * into a rail (chosen: a tenth); the most lengths into which the filling is divided for that (chosen: 0.7° at least).
 */
const OFF_SHARE = 0.1;
const MOST_LENGTHS = 512;

/** Where in a length it is looked at how far heights are off. */
const LOOKS = [0.25, 0.5, 0.75];

/** What bounds the filling. */
export interface FillOptions {
  readonly band: Band;
  /** Whether tiles of a band that tapers keep their size across: lengths across the seat are then true all round. */
  readonly keeps: boolean;
  /** Largest chordal deviation of bodies, mm. */
  readonly tolerance: number;
}

/**
 * The filling; undefined where the plain zone is left open.
 *
 * @throws AnnuletError `cannot-fill` on a band without rails, where the floor reaches up to the rails, and where ornaments
 *   leave nothing
 */
export function fillPlain(spec: PatternSpec, fit: Fit, { band, keeps, tolerance }: FillOptions): FlatBody | undefined {
  if (spec.plain !== "filled") return undefined;
  const { rails } = band;
  if (rails === undefined) throw cannotFill("beside the pattern stand no two rails", "a channel band");
  const [from, to] = plainZone(spec, fit, band.seatLength);
  const wrap = wrapSeat(band, fit, false, keeps);
  const across = acrossBetween({ ...band, rails }, wrap);
  const along = placesAlong([from, to], across, tolerance);
  const rows = along.map((u) => across(u).map(([v, h]): Point3 => [u, v, h]));
  const least = rows.flat().reduce((lowest, [, , height]) => Math.min(lowest, height), Number.POSITIVE_INFINITY);
  if (least < LEAST_FILLING) {
    throw cannotFill(
      `the floor comes within ${showLength(least)} of the rails' tops`,
      `at least ${showLength(LEAST_FILLING)} to fill`,
    );
  }
  return bodyOf(rows);
}

/** From rail to rail at one place along the band: v and the height of the top there, mm. */
type Across = readonly (readonly [v: number, height: number])[];

/** Tells the filling's top across the band at each place along it: as many points everywhere. */
function acrossBetween(
  band: Pick<Band, "looks" | "sectionAt"> & { readonly rails: Rails },
  wrap: BandSurface,
): (u: number) => Across {
  const lines = band.looks.map((angle) => wrap.lineAt(angle));
  const level = lines.every((line) => [-line.reach, 0].every((v) => line.normal(v)[1] === 1));
  return (u) => {
    const angle = wrap.angleAt(u);
    const line = wrap.lineAt(angle);
    const { rails = band.rails } = band.sectionAt(angle);
    const [low, high] = rails.faces;
    const into = Math.min(INTO_RAIL, RAIL_SHARE * (low[1] - low[0]));
    const ends = [acrossAt(line, low[1] - into), acrossAt(line, high[0] + into)] as const;
    return placesAcross(line, ends, level).map((v) => [v, heightUpTo(rails.top, line, v)]);
  };
}

/**
 * u of the places along the band from the first of which to the next the top is straight enough: two where the band is the
 * same all round. Mirrored about the middle.
 */
function placesAlong(
  [from, to]: readonly [number, number],
  across: (u: number) => Across,
  tolerance: number,
): number[] {
  const isStraight = (a: number, b: number) => {
    const [start, end] = [across(a), across(b)];
    return LOOKS.every((share) => {
      const here = across(a + share * (b - a));
      return here.every(([v, height], i) => {
        const offAcross = Math.abs(start[i][0] + share * (end[i][0] - start[i][0]) - v);
        const off = Math.abs(start[i][1] + share * (end[i][1] - start[i][1]) - height);
        return off <= OFF_SHARE * tolerance && offAcross <= OFF_SHARE * INTO_RAIL;
      });
    });
  };
  for (let lengths = 1; ; lengths *= 2) {
    const places = Array.from({ length: lengths + 1 }, (_, i) => from + ((to - from) * i) / lengths);
    if (lengths >= MOST_LENGTHS || places.slice(1).every((u, i) => isStraight(places[i], u))) return places;
  }
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
function placesAcross(line: SurfaceLine, [low, high]: readonly [number, number], level: boolean): number[] {
  if (level) return [low, high];
  const within = Array.from({ length: STRIPS + 1 }, (_, i) => line.reach * ((2 * i) / STRIPS - 1));
  return [low, ...within, high];
}

/** Height of an upright body over v whose top lies at a radius, mm. */
function heightUpTo(radius: number, line: SurfaceLine, v: number): number {
  return (radius - line.point(v, 0)[1]) * line.normal(v)[1];
}

/** @param rows across the band, one after the other along it */
function bodyOf(rows: readonly (readonly Point3[])[]): FlatBody {
  const [first, last] = [rows[0], rows[rows.length - 1]];
  const inner = rows.slice(1, -1);
  const [low, high] = [0, first.length - 1].map((i) => inner.map((row) => row[i]));
  return {
    mode: "raised",
    names: ["plain zone"],
    path: "pattern.plain",
    // It follows from the band: where that is its own image, so is the filling if its outline is.
    made: "filling",
    upright: true,
    top: topOf(rows),
    surface: undefined,
    outline: [[[...low, ...last, ...high.toReversed(), ...first.toReversed()]]],
    throat: [],
    seam: undefined,
    period: undefined,
    copies: 1,
    height: rows.flat().reduce((most, [, , height]) => Math.max(most, height), 0),
    rise: undefined,
    fade: undefined,
    filling: true,
  };
}

/** Strips from end to end where there are two rows; else two triangles between four points, which no plane need hold. */
function topOf(rows: readonly (readonly Point3[])[]): ReliefPolygon[] {
  const cells = rows.slice(1).flatMap((after, k) => {
    const before = rows[k];
    return after.slice(1).map((_, i): Point3[] => [before[i], after[i], after[i + 1], before[i + 1]]);
  });
  if (rows.length === 2) return cells.map((cell) => [cell]);
  return cells.flatMap(([a, b, c, d]): ReliefPolygon[] => [[[a, b, c]], [[a, c, d]]]);
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
