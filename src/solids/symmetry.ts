/**
 * How a ring comes again, found in its flat shapes and its beads themselves: nothing is taken on trust from the
 * document, so art or beads that are less symmetric than their group cost time, not truth.
 */

import type { Band } from "../band/band.js";
import type { BandSurface } from "../band/surface/surface.js";
import { type AboutAxis, MIDDLE_MIRROR, mirrorAt, turnAbout } from "../base/math/about-axis.js";
import { type CoverOptions, coverOf, type Side, sidesOf } from "../base/math/cover.js";
import { greatestCommon } from "../base/math/greatest-common.js";
import type { Point2 } from "../base/math/point.js";
import type { RoundSymmetry, Sector } from "../base/math/round.js";
import { FORGET, type Remember } from "../base/memory.js";
import type { Pausing } from "../base/pausing.js";
import { TOP, TURN } from "../base/units.js";
import { mirrorBeads, turnBeads } from "../beads/alike-beads.js";
import type { Bead } from "../beads/bead.js";
import { type Motion, STAY } from "../flat/motion.js";
import type { Pattern } from "../pattern/laid-out.js";
import { type FlatBody, moveBody } from "../relief/flat-body.js";
import { stonesComeAgain } from "../stones/alike-stones.js";
import type { PlacedStone } from "../stones/placed-stone.js";
import { findingImages } from "./body-images.js";
import { mirrorAxes } from "./mirror-axes.js";
import type { FlatMirrors } from "./tile.js";

/** Sides of the cross-section this near to an image are that image, mm: they differ by rounding alone. */
const SAME = 1e-6;

export interface SymmetryOptions {
  readonly pattern: Pattern;
  readonly beads: readonly Bead[];
  /** Stones that must come again with the ring. Default none. */
  readonly stones?: readonly PlacedStone[];
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
  /** Whether the half planes at the axis and opposite are mirrors. */
  readonly mirrored: boolean;
  /** Where that is, mm along the band; without one, where a unit may begin. */
  readonly axis: number;
  /** Whether z = 0 is one. */
  readonly middle: boolean;
  /** Whether the half turn about the line through the axis is kept; asked only where there are no mirrors. Default no. */
  readonly halfTurned?: boolean;
  /** The beads, as symmetric as that. */
  readonly beads: readonly Bead[];
  /** The pattern's bodies in their order; those that are images of others are exactly these images. */
  readonly bodies: readonly FlatBody[];
  /** The mirrors that each of these bodies keeps by itself. Of a ring without mirrors: none. */
  readonly mirrors: ReadonlyMap<FlatBody, FlatMirrors>;
}

/** Units into which a band without pattern, but with beads, is parted at most: more save nothing. */
const MOST_BARE_UNITS = 32;

/** The same where it carries stones: as many as these, up to a row of the smallest (chosen). */
const MOST_STONE_UNITS = 128;

/** Finds out how a ring comes again, in pieces. */
export function* findLikeness(options: SymmetryOptions): Pausing<Likeness> {
  const { pattern, beads, stones = [], wrap, band, tolerance, outlines = tolerance, remember = FORGET } = options;
  const { bodies } = pattern;
  const axes = mirrorAxes(bodies, { top: wrap.uAt(TOP), round: wrap.round, same: outlines });
  if (bodies.length + beads.length + stones.length === 0) {
    return { units: 1, mirrored: false, axis: axes[0], middle: false, beads, bodies, mirrors: new Map() };
  }
  const { units, turned } = findUnits(options);
  let [axis] = axes;
  let across: FoundMirror | undefined;
  for (const place of axes) {
    const motion = { ...STAY, u: 2 * place, mirrored: true };
    const ofBand = () => isMirrorOf(band, wrap.angleAt(place));
    across = yield* findMirror(options, turned, { motion, ofBand, inSpace: mirrorAt(wrap.angleAt(place)) });
    if (across === undefined) continue;
    axis = place;
    break;
  }
  const both = yield* findMirror(options, across?.beads ?? turned, {
    motion: { ...STAY, flipped: true },
    ofBand: () => leansNowhereRound(band, remember),
    inSpace: MIDDLE_MIRROR,
  });
  const along = across === undefined || both === undefined || goTogether(across, both) ? both : undefined;
  if (across === undefined && along === undefined && units === 1) {
    const over = yield* findHalfTurn(options, turned, axes[0]);
    if (over !== undefined) {
      const found = { units, mirrored: false, axis: axes[0], middle: false, halfTurned: true, beads: over.beads };
      return { ...found, ...makeAlike(bodies, { over }, axes[0], options) };
    }
  }
  return {
    units,
    mirrored: across !== undefined,
    // Without a mirror the facets of band and relief begin where the pattern does.
    axis: across === undefined && along === undefined ? 0 : axis,
    middle: along !== undefined,
    beads: along?.beads ?? across?.beads ?? turned,
    ...makeAlike(bodies, { across, along }, axis, options),
  };
}

/** The most units in which all bodies and beads come again. */
function findUnits({ pattern, beads, stones = [], band, tolerance }: SymmetryOptions): {
  readonly units: number;
  readonly turned: readonly Bead[];
} {
  const { bodies, repeats } = pattern;
  const alike = band.revolved ? bodies.reduce((all, { copies }) => greatestCommon(all, copies), repeats) : 1;
  const bare = bodies.length === 0;
  let units = bare && band.revolved ? Math.max(MOST_BARE_UNITS, Math.min(stones.length, MOST_STONE_UNITS)) : alike;
  const comeAgain = () =>
    units === 1 || stonesComeAgain(stones, turnAbout(TURN / units)) ? turnBeads(beads, units, tolerance) : undefined;
  let turned = comeAgain();
  for (; turned === undefined; turned = comeAgain()) {
    do units--;
    while (!bare && alike % units !== 0);
  }
  return { units, turned };
}

/** A mirror of the flat seat, of the band, and in space. */
interface PossibleMirror {
  readonly motion: Motion;
  readonly ofBand: () => boolean;
  readonly inSpace: AboutAxis;
}

/** A mirror that the whole ring keeps. */
interface FoundMirror {
  readonly motion: Motion;
  /** For each body the number of its image. */
  readonly images: readonly number[];
  readonly beads: readonly Bead[];
}

function* findMirror(
  { pattern, stones = [], wrap, tolerance, outlines = tolerance, remember = FORGET }: SymmetryOptions,
  beads: readonly Bead[],
  { motion, ofBand, inSpace }: PossibleMirror,
): Pausing<FoundMirror | undefined> {
  if (!ofBand() || !stonesComeAgain(stones, inSpace)) return undefined;
  const images = yield* findingImages(pattern.bodies, { motion, round: wrap.round, same: outlines, remember });
  if (images === undefined) return undefined;
  const mirrored = mirrorBeads(beads, inSpace, tolerance);
  return mirrored && { motion, images, beads: mirrored };
}

/** The half turn about the line from the finger axis through a place on v = 0, where a ring whose bodies end by themselves keeps it. */
function* findHalfTurn(
  options: SymmetryOptions,
  beads: readonly Bead[],
  place: number,
): Pausing<FoundMirror | undefined> {
  const { pattern, wrap, band, remember = FORGET } = options;
  if (pattern.bodies.some(({ seam, period }) => seam !== undefined || period !== undefined)) return undefined;
  return yield* findMirror(options, beads, {
    motion: { ...STAY, u: 2 * place, mirrored: true, flipped: true },
    ofBand: () => isMirrorOf(band, wrap.angleAt(place)) && leansNowhereRound(band, remember),
    inSpace: { ...mirrorAt(wrap.angleAt(place)), e: -1 },
  });
}

/** Whether bodies can be made alike under both mirrors: not where both bring a body to one that is another. */
function goTogether({ images: across }: FoundMirror, { images: along }: FoundMirror): boolean {
  return across.every((image, i) => along[image] === across[along[i]] && (image === i || image !== along[i]));
}

/** The mirrors that a ring keeps, or the half turn that it keeps without any. */
interface Found {
  readonly across?: FoundMirror | undefined;
  readonly along?: FoundMirror | undefined;
  readonly over?: FoundMirror;
}

/** The bodies made exactly as alike as mirrors have found them: the first of those that are images of each other stays. */
function makeAlike(
  bodies: readonly FlatBody[],
  { across, along, over }: Found,
  axis: number,
  { remember = FORGET }: SymmetryOptions,
): Pick<Likeness, "bodies" | "mirrors"> {
  if ((across ?? along ?? over) === undefined) return { bodies, mirrors: new Map() };
  const made = new Map<number, FlatBody>();
  const mirrors = new Map<FlatBody, FlatMirrors>();
  const put = (i: number, body: FlatBody) => {
    made.set(i, body);
    const [isAcross, isAlong, isOver] = [across, along, over].map((found) => found?.images[i] === i);
    mirrors.set(body, { axis, across: isAcross, middle: isAlong, halfTurned: isOver });
  };
  const putImage = (of: number, mirror: FoundMirror | undefined) => {
    const body = made.get(of);
    if (body === undefined || mirror === undefined || made.has(mirror.images[of])) return;
    const { motion, images } = mirror;
    put(
      images[of],
      remember(["image", motion], [body], () => moveBody(body, motion)),
    );
  };
  bodies.forEach((body, i) => {
    if (made.has(i)) return;
    put(i, body);
    putImage(i, across ?? over);
    for (const of of [i, across?.images[i] ?? i]) putImage(of, along);
  });
  return { bodies: bodies.map((body, i) => made.get(i) ?? body), mirrors };
}

/** Whether the half planes at an angle and opposite it are mirrors of the band: its sections on both sides are the same. */
function isMirrorOf(band: Band, angle: number): boolean {
  if (band.revolved) return true;
  return band.looks.every((look) => {
    const [one, other] = [band.sectionAt(look).polyline, band.sectionAt(2 * angle - look).polyline];
    return one.every(([w, r], i) => Math.hypot(w - other[i][0], r - other[i][1]) <= SAME);
  });
}

/** Whether the plane z = 0 is a mirror of the band. */
function leansNowhereRound(band: Band, remember: Remember): boolean {
  return remember(["upright band"], [band], () =>
    band.looks.every((angle) => leansNowhere(band.sectionAt(angle).polyline)),
  );
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
  likeness: Omit<Likeness, "bodies" | "mirrors">,
  { wrap, facets }: { readonly wrap: BandSurface; readonly facets: number },
): RoundSymmetry | undefined {
  const { units, mirrored, axis, middle, halfTurned, beads } = likeness;
  const startAngle = wrap.angleAt(axis);
  const halves = (sectors: readonly Sector[]) =>
    middle ? [...sectors.map((sector) => ({ ...sector, upper: true })), ...sectors] : sectors;
  if (mirrored) {
    return { units, mirrored, sectors: halves([{ from: startAngle, to: startAngle + TURN / units / 2 }]) };
  }
  if (halfTurned) {
    return { units, mirrored, halfTurned, sectors: [{ from: startAngle, to: startAngle + TURN / units / 2 }] };
  }
  if (units === 1) {
    return middle
      ? { units, mirrored, sectors: [{ from: startAngle, to: startAngle + TURN, upper: true }] }
      : undefined;
  }
  const step = TURN / facets;
  const places = Array.from({ length: Math.min(PLACES, facets / units) }, (_, i) => startAngle + (i + BEGIN) * step);
  const costs = places.map((from) => ({ from, cost: beads.reduce((sum, bead) => sum + cutCost(bead, from), 0) }));
  costs.sort((a, b) => a.cost - b.cost || a.from - b.from);
  const sectors = costs.slice(0, PLACES_KEPT).map(({ from }) => ({ from, to: from + TURN / units }));
  return { units, mirrored, sectors: halves(sectors) };
}

/** Facets on either side in which a place to cut is looked for. */
const FACETS_ASIDE = 3;

/**
 * Where near an angle a ring may be cut by a half plane: clear of the lines of its facets and where the fewest beads are cut.
 *
 * @param facets of the band, the first line at `startAngle`
 */
export function cutNear(
  angle: number,
  beads: readonly Bead[],
  { facets, startAngle }: { readonly facets: number; readonly startAngle: number },
): number {
  const step = TURN / facets;
  const home = Math.round((angle - startAngle) / step);
  let best = { at: angle, cost: Number.POSITIVE_INFINITY };
  for (let i = -FACETS_ASIDE; i <= FACETS_ASIDE; i++) {
    const at = startAngle + (home + i + BEGIN) * step;
    const cost = beads.reduce((sum, bead) => sum + cutCost(bead, at), 0);
    if (cost < best.cost) best = { at, cost };
  }
  return best.at;
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
