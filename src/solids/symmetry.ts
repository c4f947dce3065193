/**
 * How a ring comes again, found in its flat shapes and its beads themselves: nothing is taken on trust from the
 * document, so art or beads that are less symmetric than their group cost time, not truth.
 */

import type { Band } from "../band/band.js";
import type { BandSurface } from "../band/surface/surface.js";
import { type CoverOptions, coverOf, type Side, sidesOf } from "../base/math/cover.js";
import { extent } from "../base/math/extent.js";
import { greatestCommon } from "../base/math/greatest-common.js";
import type { Point2 } from "../base/math/point.js";
import type { RoundSymmetry, Sector } from "../base/math/round.js";
import { FORGET, type Remember } from "../base/memory.js";
import { TURN } from "../base/units.js";
import { mirrorBeads, turnBeads } from "../beads/alike-beads.js";
import type { Bead } from "../beads/bead.js";
import type { Pattern } from "../pattern/laid-out.js";
import type { FlatBody } from "../relief/flat-body.js";

/** Sides of the cross-section this near to an image are that image, mm: they differ by rounding alone. */
const SAME = 1e-6;

export interface SymmetryOptions {
  readonly pattern: Pattern;
  readonly beads: readonly Bead[];
  readonly wrap: BandSurface;
  readonly band: Band;
  /**
   * Largest chordal deviation, mm. Outlines and beads this near to an image are held to be it: arcs and curves are
   * flattened from one of their ends, and beads spaced along them. Bodies are then made of one half and its image, and
   * beads put half way to theirs, on every road.
   */
  readonly tolerance: number;
  /** The same of outlines, where they are coarser than that. Default: the same. */
  readonly outlines?: number;
  /** Takes over what was found of bodies before. Default: looks at all. */
  readonly remember?: Remember;
}

/** Which parts of a ring are alike. */
export interface Likeness {
  /** Alike units of the round. */
  readonly units: number;
  /** Whether the half plane at the axis is a mirror. */
  readonly mirrored: boolean;
  /** Where that is, mm along the band: at 0, or in the middle of what does not go all the way round. */
  readonly axis: number;
  /** Whether z = 0 is. */
  readonly middle: boolean;
  /** The beads, as symmetric as that. */
  readonly beads: readonly Bead[];
}

/** Units into which a band without pattern, but with beads, is parted at most: more save nothing. */
const MOST_BARE_UNITS = 32;

/** Finds out how a ring comes again. */
export function findLikeness(options: SymmetryOptions): Likeness {
  const { pattern, beads, wrap, band, tolerance, outlines = tolerance, remember = FORGET } = options;
  const { bodies } = pattern;
  const ends = extent(bodies.flatMap(({ outline, seam }) => (seam ? [] : outline.flat(2).map(([u]) => u))));
  const axis = ends[0] <= ends[1] ? (ends[0] + ends[1]) / 2 : 0;
  if (bodies.length + beads.length === 0) return { units: 1, mirrored: false, axis, middle: false, beads };
  const alike = band.revolved ? bodies.reduce((all, { copies }) => greatestCommon(all, copies), pattern.repeats) : 1;
  const bare = bodies.length === 0;
  let units = bare && band.revolved ? MOST_BARE_UNITS : alike;
  let turned = turnBeads(beads, units, tolerance);
  for (; turned === undefined; turned = turnBeads(beads, units, tolerance)) {
    do units--;
    while (!bare && alike % units !== 0);
  }
  const { round } = wrap;
  const mirrors = (name: string, image: (point: Point2) => Point2) =>
    bodies.every((body) => hasPlainTop(body, axis, tolerance)) &&
    bodies.every((one) =>
      remember([name, axis, round, outlines], [one], () => isMirrored(one, image, { round, same: outlines })),
    );
  const across =
    isMirrorOf(band, wrap.angleAt(axis)) && mirrors("mirrored across", ([u, v]) => [2 * axis - u, v])
      ? mirrorBeads(turned, flip(wrap, axis), tolerance)
      : undefined;
  if (across === undefined) return { units, mirrored: false, axis, middle: false, beads: turned };
  const along =
    band.looks.every((angle) => leansNowhere(band.sectionAt(angle).polyline)) &&
    mirrors("mirrored along", ([u, v]) => [u, -v])
      ? mirrorBeads(across, ([x, y, z]) => [x, y, -z], tolerance)
      : undefined;
  return { units, mirrored: true, axis, middle: along !== undefined, beads: along ?? across };
}

function flip(wrap: BandSurface, axis: number): (point: Bead["centre"]) => Bead["centre"] {
  const angle = wrap.angleAt(axis);
  const [cos, sin] = [Math.cos(2 * angle), Math.sin(2 * angle)];
  return ([x, y, z]) => [x * cos + y * sin, x * sin - y * cos, z];
}

/** Whether a body's surface follows from its outline alone, and fades alike on both sides of an axis. */
function hasPlainTop({ surface, rise, fade, period }: FlatBody, axis: number, same: number): boolean {
  if (surface !== undefined || rise !== undefined || period !== undefined) return false;
  return fade === undefined || Math.abs((fade.ends[0] + fade.ends[1]) / 2 - axis) <= same;
}

/**
 * Whether the image of an outline, which comes again from seam to seam or once a round, is that outline: whole sides are
 * asked, and the way they run, so that a shape is told from its ground. An image under a mirror runs the other way. One
 * direction is enough, since a mirror done twice changes nothing.
 */
function isMirrored(
  { outline, seam }: Pick<FlatBody, "outline" | "seam">,
  image: (point: Point2) => Point2,
  { round, same }: { readonly round: number; readonly same: number },
): boolean {
  const [left, right] = seam ?? [0, round];
  const sides = outline.flat().flatMap((ring) =>
    sidesOf(
      ring.map(([u, v]): Point2 => [u, v]),
      true,
    ),
  );
  const onSeam = ([[au], [bu]]: Side) => seam !== undefined && au === bu && (au === left || au === right);
  const drawn = sides.filter((side) => !onSeam(side));
  return isOwnImage(drawn, image, { reach: same, period: right - left, directed: true });
}

/** Whether the half planes at an angle and opposite it are mirrors of the band: its sections on both sides are the same. */
function isMirrorOf(band: Band, angle: number): boolean {
  if (band.revolved) return true;
  return band.looks.every((look) => {
    const [one, other] = [band.sectionAt(look).polyline, band.sectionAt(2 * angle - look).polyline];
    return one.every(([w, r], i) => Math.hypot(w - other[i][0], r - other[i][1]) <= SAME);
  });
}

/** Whether the cross-section is its own image in the plane z = 0. */
function leansNowhere(polyline: readonly Point2[]): boolean {
  return isOwnImage(sidesOf(polyline, true), ([w, r]) => [-w, r], { reach: SAME, directed: true });
}

/** Whether sides lie on their own image under a mirror, which turns the way they run. */
function isOwnImage(sides: readonly Side[], image: (point: Point2) => Point2, options: CoverOptions): boolean {
  const covered = coverOf(sides, options);
  return sides.every(([a, b]) => covered([image(b), image(a)]));
}

/** Where in a facet of the band a unit may begin: clear of its lines and of the relief's, which lie half way. */
const BEGIN = 0.37;

/** Most places for a unit's beginning that are compared, and how many of them are kept. */
const PLACES = 24;
const PLACES_KEPT = 3;

/** A plane that touches a bead nearer than this to its pole cuts off a sliver, mm. */
const GRAZE = 0.01;

/** What that costs, in beads that are cut: more than any ring has. */
const GRAZE_COST = 1e9;

/**
 * The sectors of a ring that are enough; undefined where nothing comes again.
 *
 * @param facets of the band
 */
export function symmetryOf(
  { units, mirrored, axis, middle, beads }: Likeness,
  { wrap, facets }: { readonly wrap: BandSurface; readonly facets: number },
): RoundSymmetry | undefined {
  const startAngle = wrap.angleAt(axis);
  if (mirrored) {
    const half: Sector = { from: startAngle, to: startAngle + TURN / units / 2 };
    return { units, mirrored, sectors: middle ? [{ ...half, upper: true }, half] : [half] };
  }
  if (units === 1) return undefined;
  const step = TURN / facets;
  const places = Array.from({ length: Math.min(PLACES, facets / units) }, (_, i) => startAngle + (i + BEGIN) * step);
  const costs = places.map((from) => ({ from, cost: beads.reduce((sum, bead) => sum + cutCost(bead, from), 0) }));
  costs.sort((a, b) => a.cost - b.cost || a.from - b.from);
  const sectors = costs.slice(0, PLACES_KEPT).map(({ from }) => ({ from, to: from + TURN / units }));
  return { units, mirrored, sectors };
}

/** 1 for a bead that the half plane at an angle cuts, more than all beads together for one that it grazes. */
function cutCost({ centre: [x, y], radius }: Bead, angle: number): number {
  const [along, away] = [
    x * Math.cos(angle) + y * Math.sin(angle),
    Math.abs(y * Math.cos(angle) - x * Math.sin(angle)),
  ];
  if (along < 0 || away > radius + GRAZE) return 0;
  return Math.abs(away - radius) < GRAZE ? GRAZE_COST : 1;
}
