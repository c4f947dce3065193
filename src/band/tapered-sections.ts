/**
 * The exact cross-sections of a band that tapers: drawn by the form at a row of angles, and between two of them each
 * number of each curve taken from the four nearest by a cubic.
 *
 * The cubic is Catmull and Rom's ("A class of local interpolating splines", 1974). At one degree from row to row what lies
 * between is off by less than 2e-5 mm (measured), a thousandth of what is printed or cast.
 */
import { AnnuletError } from "../base/errors.js";
import { type Segment, segmentBounds, segmentLength } from "../base/math/curve.js";
import type { Point2 } from "../base/math/point.js";
import { degrees, TOP, TURN } from "../base/units.js";
import type { ProfileSpec } from "../design/profile/profile.js";
import { buildOutline, type ExactProfile, type Rails } from "./profile/outline.js";
import { seatOf } from "./profile/seat.js";
import type { Taper } from "./taper.js";
import { tooFarTapered } from "./taper-limits.js";

/** Angles at which the form draws the section. */
const ROWS = 360;

export interface TaperedSections {
  /** The sections that were drawn, one a degree, from the top on. */
  readonly rows: readonly ExactProfile[];
  readonly sectionAt: (angle: number) => ExactProfile;
  /** The seat alone, as in `sectionAt`. */
  readonly seatAt: (angle: number) => readonly Segment[];
}

/**
 * @throws AnnuletError `taper-too-far` where a size leaves no such band; `taper-changes-form` where the section's curves
 *   are not the same all round
 */
export function taperedSections(
  spec: ProfileSpec,
  taper: Taper,
  boreRadius: number,
  tolerance: number,
): TaperedSections {
  const known = new Map<string, ExactProfile>();
  const draw = (angle: number) => {
    const sizes = taper.sizesAt(angle);
    const key = `${sizes.width} ${sizes.thickness}`;
    const drawn = known.get(key) ?? drawAt(spec, sizes, { angle, boreRadius, tolerance });
    known.set(key, drawn);
    return drawn;
  };
  // A size that the design gives is named before one that follows from it.
  for (const angle of taper.given) draw(angle);
  const rows = alikeTurned(Array.from({ length: ROWS }, (_, i) => draw(TOP + (TURN * i) / ROWS)));
  const between = <Result>(angle: number, mix: (near: readonly ExactProfile[], weights: Weights) => Result) => {
    const at = (((angle - TOP) / TURN - Math.floor((angle - TOP) / TURN)) * ROWS) % ROWS;
    const row = Math.floor(at);
    const near = [-1, 0, 1, 2].map((k) => rows[(row + k + ROWS) % ROWS]);
    return mix(near, weightsAt(at - row));
  };
  return {
    rows,
    sectionAt: (angle) => between(angle, (near, weights) => mixProfiles(near, weights, taper.sizesAt(angle))),
    seatAt: (angle) =>
      between(angle, (near, weights) => {
        const [first, end] = near[0].seatSegments;
        const own = Array.from({ length: end - first }, (_, i) =>
          mixSegments(
            near.map(({ outline }) => outline[first + i]),
            weights,
          ),
        );
        return seatOf(own, [0, own.length]);
      }),
  };
}

interface Drawing {
  readonly angle: number;
  readonly boreRadius: number;
  readonly tolerance: number;
}

function drawAt(spec: ProfileSpec, sizes: { width: number; thickness: number }, drawing: Drawing): ExactProfile {
  const { boreRadius, tolerance } = drawing;
  const draw = (width: number, thickness: number) => {
    return buildOutline({ ...spec, width, thickness }, boreRadius, tolerance);
  };
  try {
    return draw(sizes.width, sizes.thickness);
  } catch (error) {
    // What is wrong at the top is wrong with the profile itself.
    const same = sizes.width === spec.width && sizes.thickness === spec.thickness;
    if (same || !(error instanceof AnnuletError)) throw error;
    throw tooFarTapered(error, { spec, sizes, angle: drawing.angle, draw });
  }
}

/** Checks that all have the same curves, and takes whole turns out of the angles of arcs. */
function alikeTurned(sections: readonly ExactProfile[]): ExactProfile[] {
  const [top] = sections;
  return sections.map((section, i) => {
    const { outline } = section;
    const alike =
      outline.length === top.outline.length &&
      section.boreFace.length === top.boreFace.length &&
      (section.rails === undefined) === (top.rails === undefined) &&
      section.seatSegments.every((at, k) => at === top.seatSegments[k]) &&
      outline.every(({ kind }, k) => kind === top.outline[k].kind);
    if (!alike) throw changesForm((TURN * i) / sections.length);
    return { ...section, outline: outline.map((segment, k) => turnedAs(segment, top.outline[k])) };
  });
}

/** An arc whose start lies within half a turn of another's. */
function turnedAs(segment: Segment, other: Segment): Segment {
  if (segment.kind === "line" || other.kind === "line") return segment;
  return { ...segment, start: segment.start - TURN * Math.round((segment.start - other.start) / TURN) };
}

function changesForm(away: number): AnnuletError {
  const angle = Math.round(degrees(TOP + away)) % 360;
  return new AnnuletError({
    code: "taper-changes-form",
    message: `at ${angle}° the cross-section is made of other curves than at the top, so that one cannot go over into the other`,
    path: "profile.taper",
    hint: "a rounded corner just fits there, or the outside is drawn freely with curves: make edges smaller, taper less, or draw it with points",
  });
}

type Weights = readonly [number, number, number, number];

/** Shares of four values in a row for a place so far from the second to the third. */
function weightsAt(t: number): Weights {
  const [square, cube] = [t * t, t * t * t];
  return [
    (-t + 2 * square - cube) / 2,
    (2 - 5 * square + 3 * cube) / 2,
    (t + 4 * square - 3 * cube) / 2,
    (cube - square) / 2,
  ];
}

function mixNumbers([a, b, c, d]: readonly number[], [wa, wb, wc, wd]: Weights): number {
  return a * wa + b * wb + c * wc + d * wd;
}

function mixPoints([a, b, c, d]: readonly Point2[], [wa, wb, wc, wd]: Weights): Point2 {
  return [a[0] * wa + b[0] * wb + c[0] * wc + d[0] * wd, a[1] * wa + b[1] * wb + c[1] * wc + d[1] * wd];
}

function mixSegments([a, b, c, d]: readonly Segment[], weights: Weights): Segment {
  if (a.kind === "line" && b.kind === "line" && c.kind === "line" && d.kind === "line") {
    const from = mixPoints([a.from, b.from, c.from, d.from], weights);
    return { kind: "line", from, to: mixPoints([a.to, b.to, c.to, d.to], weights) };
  }
  if (a.kind === "arc" && b.kind === "arc" && c.kind === "arc" && d.kind === "arc") {
    return {
      kind: "arc",
      centre: mixPoints([a.centre, b.centre, c.centre, d.centre], weights),
      radius: mixNumbers([a.radius, b.radius, c.radius, d.radius], weights),
      start: mixNumbers([a.start, b.start, c.start, d.start], weights),
      sweep: mixNumbers([a.sweep, b.sweep, c.sweep, d.sweep], weights),
    };
  }
  throw new Error("sections are checked to have the same curves");
}

function mixProfiles(
  near: readonly ExactProfile[],
  weights: Weights,
  sizes: Pick<ExactProfile, "width" | "thickness">,
): ExactProfile {
  const [, { bore, boreRadius, seatSegments, symmetric }] = near;
  const row = <Row>(rowOf: (section: ExactProfile) => readonly Row[], mix: (rows: readonly Row[]) => Row): Row[] =>
    rowOf(near[1]).map((_, i) => mix(near.map((section) => rowOf(section)[i])));
  const outline = row(
    (section) => section.outline,
    (segments) => mixSegments(segments, weights),
  );
  const boreFace = row(
    (section) => section.boreFace,
    (segments) => mixSegments(segments, weights),
  );
  const seat = seatOf(outline, seatSegments);
  return {
    ...sizes,
    boreRadius,
    outsideRadius: Math.max(...outline.map((segment) => segmentBounds(segment).max[1])),
    bore,
    outline,
    seat,
    seatLength: seat.reduce((sum, segment) => sum + segmentLength(segment), 0),
    seatSegments,
    rails: mixRails(near, weights),
    ledges: mixLedges(near, weights),
    boreFace,
    symmetric,
  };
}

function mixLedges(near: readonly ExactProfile[], weights: Weights): ExactProfile["ledges"] {
  const ledges = near.flatMap((section) => (section.ledges === undefined ? [] : [section.ledges]));
  if (ledges.length < near.length) return undefined;
  const mix = (side: 0 | 1) => ({
    w: mixNumbers(
      ledges.map((pair) => pair[side].w),
      weights,
    ),
    radius: mixNumbers(
      ledges.map((pair) => pair[side].radius),
      weights,
    ),
  });
  return [mix(0), mix(1)];
}

function mixRails(near: readonly ExactProfile[], weights: Weights): Rails | undefined {
  const rails = near.flatMap((section) => (section.rails === undefined ? [] : [section.rails]));
  if (rails.length < near.length) return undefined;
  const mix = (of: (one: Rails) => number) => mixNumbers(rails.map(of), weights);
  return {
    top: mix(({ top }) => top),
    faces: [
      [mix(({ faces }) => faces[0][0]), mix(({ faces }) => faces[0][1])],
      [mix(({ faces }) => faces[1][0]), mix(({ faces }) => faces[1][1])],
    ],
    root: mix(({ root }) => root),
    width: mix(({ width }) => width),
  };
}
