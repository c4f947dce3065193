/**
 * Woven ribbons as bodies: each strand in pieces that end beneath what passes over them, and bridge what they pass over.
 *
 * A bridge is solid down to the seat, so a piece need not go on below it: it ends a little before the middle of the strand
 * above, cut off square to the seat. Pieces touch nothing of each other but there, inside the metal.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Pausing } from "../../base/pausing.js";
import { showLength } from "../../base/units.js";
import type { WeaveSpec } from "../../design/pattern/weave.js";
import { fromGrid, type GridPath, toGrid } from "../../flat/grid.js";
import {
  clipAlong,
  contains,
  type GridRegion,
  intersect,
  offset,
  ribbonAlong,
  ribbonAround,
  ringArea,
  subtract,
  unite,
} from "../../flat/polygons.js";
import { clearRing, inFirstPeriod, makeOnce, repeatsOf, type Strip, steps } from "../../flat/strip.js";
import { walkLine } from "../../flat/walk-line.js";
import { followedContours, type Level, plainContours } from "../contours.js";
import type { DrawnRegion } from "../drawn-region.js";
import type { Fade, FlatBody } from "../flat-body.js";
import { sectionOf } from "../region-section.js";
import { raisingRegion, stackLevels } from "../section.js";
import { edgeTooLarge } from "../sections/flat.js";
import { drawSection } from "../sections/index.js";
import type { SectionLine } from "../sections/section-form.js";
import { type Arc, cutStrands, pointsBetween, type UnderEnd } from "./arcs.js";
import { type Crossing, findCrossings, type Strand } from "./crossings.js";
import { orderCrossings } from "./order.js";
import { riseAlong } from "./rise-along.js";

/** A woven region with what its pieces share. */
interface Member {
  readonly region: DrawnRegion;
  readonly name: string;
  readonly weave: WeaveSpec;
  /** Where the weave stands in the document. */
  readonly path: string;
  readonly width: number;
  /** Its section's line. */
  readonly line: SectionLine;
  readonly top: number;
  readonly fade: Fade | undefined;
}

/**
 * The bodies of the regions that are woven; other regions are left out.
 *
 * @throws AnnuletError `weave-mixed` where a set is woven in two ways, `weave-too-low`, `weave-too-long`,
 *   `round-too-large`, `bevel-too-large`, and as `findCrossings`, `orderCrossings` and `cutStrands`
 */
export function* weaveRegions(
  strip: Strip,
  drawn: readonly DrawnRegion[],
  fade: Fade | undefined,
): Pausing<ReadonlyMap<DrawnRegion, readonly FlatBody[]>> {
  const sets = new Map<string, Member[]>();
  for (const region of drawn) {
    const weave = region.spec.ribbon?.weave;
    if (weave === undefined) continue;
    sets.set(weave.set, [...(sets.get(weave.set) ?? []), memberOf(strip, region, weave, fade)]);
  }
  const woven = new Map<DrawnRegion, readonly FlatBody[]>();
  for (const members of sets.values()) {
    for (const [region, bodies] of yield* weaveSet(strip, members)) woven.set(region, bodies);
  }
  return woven;
}

function memberOf(strip: Strip, region: DrawnRegion, weave: WeaveSpec, fade: Fade | undefined): Member {
  const { section, path } = sectionOf(region.spec, region.path);
  const width = region.spec.ribbon?.width ?? 0;
  const line = drawSection(section, { reach: () => width / 2, tolerance: strip.artTolerance, path });
  const inmost = line[line.length - 1][0];
  if (section.form === "flat" && inmost >= width / 2) {
    const field = section.bevel > 0 ? "bevel" : "round";
    const why = `the ribbon is only ${showLength(width)} wide`;
    throw edgeTooLarge({ path, field, value: section[field], largest: width / 2, why });
  }
  return {
    region,
    weave,
    width,
    line,
    fade,
    name: region.name,
    path: `${region.path}.ribbon.weave`,
    top: Math.max(...line.map(([, h]) => h)),
  };
}

function* weaveSet(strip: Strip, members: readonly Member[]): Pausing<Map<DrawnRegion, FlatBody[]>> {
  const [{ weave, path }] = members;
  const other = members.find((member) => member.weave.over !== weave.over);
  if (other !== undefined) throw mixed(other, weave);
  const mm = (x: number) => x / strip.grid.scale;
  const strands = members.flatMap(({ region, width }, member) =>
    region.art.centre.map(({ points, closed }): Strand => {
      const walk = walkLine({ points: fromGrid(strip.grid, points), kind: closed ? "loop" : "open" });
      return { walk, closed, width, member };
    }),
  );
  const [low, high] = strip.complete;
  const crossings = findCrossings(strands, [mm(low), mm(high)], path);
  const window = [mm(low) + strip.tileWidth, mm(high) - strip.tileWidth] as const;
  const names = members.map(({ name }) => name);
  const order = orderCrossings(strip, strands, crossings, { names, path, window, later: weave.over === "later" });
  requireHigher(members, strands, crossings, order);
  const goesOn = ({ walk }: Strand, span: readonly [number, number]) =>
    span
      .map((s) => s === 0 || s === walk.length)
      .map((end, i) => {
        const [u] = walk.pointAt(span[i]);
        return end && strip.periodic && (u < window[0] || u > window[1]);
      });
  const isEndless = (strand: Strand, span: readonly [number, number]) =>
    !strand.closed && goesOn(strand, span).every(Boolean);
  const pathOf = ({ walk, closed }: Strand, span: readonly [number, number]) =>
    toGrid(strip.grid, pointsBetween(walk, closed, span));
  const wants = (strand: Strand, span: readonly [number, number]) => {
    if (isEndless(strand, span)) return true;
    const points = pathOf(strand, span);
    return strip.periodic ? inFirstPeriod(strip, points) : clearRing(strip, points);
  };
  yield path;
  const arcs = cutStrands(strands, crossings, order, { members, wants });
  requireAll(strip, arcs, crossings, members);
  const woven = new Map<DrawnRegion, FlatBody[]>();
  for (const [i, member] of members.entries()) {
    const own = arcs.filter(({ strand }) => strands[strand].member === i);
    const endless = own.filter(({ strand, span }) => isEndless(strands[strand], span));
    const bodies: FlatBody[] = [];
    for (const arc of own) {
      yield member.path;
      if (!isEndless(strands[arc.strand], arc.span)) bodies.push(...(yield* raisePiece(strip, member, strands, arc)));
    }
    woven.set(member.region, [...bodies, ...(yield* raiseEndless(strip, member, strands, endless))]);
  }
  return woven;
}

/** A piece is cut off beneath the middle of the strand above, along a core as wide as this share of it. */
const CORE_SHARE = 0.4;

/** Cores reach this many of their widths beyond the ribbon that they cut. */
const CORE_BEYOND = 0.5;

/** From each contour of a piece to the next its end stands back by this, mm, so that they stay inside each other. */
const END_STEP = 3e-3;

/** The piece's body. */
function* raisePiece(strip: Strip, member: Member, strands: readonly Strand[], arc: Arc): Pausing<FlatBody[]> {
  const { walk } = strands[arc.strand];
  const levels = yield* cutLevels(strip, member, strands, arc);
  if (levels.length === 0) return [];
  const { bands, last, outline } = yield* stackLevels({ ...strip, periodic: false }, levels);
  const rise = riseAlong([{ walk, span: arc.span, bridges: arc.bridges }], riseOptions(strip, member));
  return [
    {
      mode: "raised",
      names: [member.name],
      path: member.region.path,
      made: undefined,
      upright: false,
      top: [...bands, ...last],
      surface: undefined,
      outline,
      throat: [],
      seam: undefined,
      period: strip.periodic ? strip.period / strip.grid.scale : undefined,
      copies: repeatsOf(strip),
      height: member.top + (rise === undefined ? 0 : member.weave.lift),
      rise,
      fade: member.fade,
    },
  ];
}

/** The contours of a piece: those of a longer one, so that its section goes on unchanged to where it is cut off. */
function* cutLevels(
  strip: Strip,
  { region, width, line }: Member,
  strands: readonly Strand[],
  arc: Arc,
): Pausing<Level[]> {
  const { join, ends } = region.spec.ribbon ?? { join: "round", ends: "butt" };
  const { closed, walk } = strands[arc.strand];
  const [start, end] = arc.ends.map((under) => {
    return under === undefined ? 0 : reachUnder(under, strands[under.strand], width) + width / 2;
  });
  const [from, to] = [arc.span[0] - start, arc.span[1] + end];
  const span = closed ? ([from, to] as const) : ([Math.max(0, from), Math.min(walk.length, to)] as const);
  const points = toGrid(strip.grid, pointsBetween(walk, closed, span));
  const across = steps(strip, width);
  const whole = closed && arc.ends.every((under) => under === undefined);
  const ribbon = whole
    ? ribbonAround([points.slice(0, -1)], across, join, strip.arcTolerance)
    : ribbonAlong([points], across, join, arc.ends.includes(undefined) ? ends : "butt", strip.arcTolerance);
  const contours = sectionOf(region.spec, region.path).section.form === "flat" ? plainContours : followedContours;
  const cores = arc.ends.flatMap((under) => {
    return under === undefined ? [] : coreOf(strip, under, strands[under.strand], width);
  });
  const [foot] = yield* contours(strip, ribbon, line.slice(0, 1));
  const [middle] = toGrid(strip.grid, [walk.pointAt((arc.span[0] + arc.span[1]) / 2)]);
  const part = partAt(subtract(foot.rings, cores), middle);
  const worked = strip.periodic ? ribbon : clipAlong(ribbon, 0, strip.repeats * strip.grid.tile, 4 * strip.halfSeat);
  const levels = yield* contours(strip, worked, line);
  return levels.flatMap((level, i): Level[] => {
    if (cores.length === 0) return level.rings.length === 0 ? [] : [level];
    const back = offset(cores, steps(strip, i * END_STEP), "miter", strip.arcTolerance);
    const rings = intersect(subtract(level.rings, back), part);
    return rings.length === 0 ? [] : [{ ...level, rings }];
  });
}

/** Strands that go all the way round and pass under nothing. */
function* raiseEndless(
  strip: Strip,
  member: Member,
  strands: readonly Strand[],
  arcs: readonly Arc[],
): Pausing<FlatBody[]> {
  if (arcs.length === 0) return [];
  const { region, width } = member;
  const { join, ends } = region.spec.ribbon ?? { join: "round", ends: "butt" };
  const lines = arcs.map(({ strand }) => toGrid(strip.grid, strands[strand].walk.points));
  const rings = makeOnce(strip, lines, (paths) =>
    ribbonAlong(paths, steps(strip, width), join, ends, strip.arcTolerance),
  );
  const { section, path } = sectionOf(region.spec, region.path);
  const own = { mode: "raised", names: [member.name], where: region.path, fade: member.fade } as const;
  const shape = yield* raisingRegion(strip, unite(rings), { ...own, section, path });
  if (shape === undefined) return [];
  const lifted = arcs.map(({ strand, span, bridges }) => ({ walk: strands[strand].walk, span, bridges }));
  const rise = riseAlong(lifted, riseOptions(strip, member));
  return [{ ...shape, made: undefined, rise, height: shape.height + (rise === undefined ? 0 : member.weave.lift) }];
}

function riseOptions(strip: Strip, { weave, width, line }: Member) {
  const from = (line.find(([d]) => d >= 0) ?? line[0])[1];
  return { lift: weave.lift, width, from, tolerance: strip.bodyTolerance };
}

/** mm along a strand from its crossing with the one above to where it is wholly past that one's core. */
function reachUnder({ angle }: UnderEnd, over: Strand, width: number): number {
  return (CORE_SHARE * over.width) / 2 / Math.sin(angle) + width / 2 / Math.tan(angle);
}

/** What is taken off a piece at its end: the middle of the strand above. */
function coreOf(strip: Strip, { s, angle }: UnderEnd, over: Strand, width: number): GridRegion {
  const core = CORE_SHARE * over.width;
  const reach = width / 2 / Math.sin(angle) + core / 2 / Math.tan(angle) + CORE_BEYOND * core;
  const [from, to] = over.closed
    ? [s - reach, s + reach]
    : [Math.max(0, s - reach), Math.min(over.walk.length, s + reach)];
  const line = toGrid(strip.grid, pointsBetween(over.walk, over.closed, [from, to]));
  return ribbonAlong([line], steps(strip, core), "round", "butt", strip.arcTolerance);
}

/** The part of a region in which a point lies. */
function partAt(region: GridRegion, point: GridPath[number]): GridRegion {
  const part = region.find((ring) => ringArea(ring) > 0 && contains(ring, point));
  return part === undefined ? [] : intersect(region, [part]);
}

/** What passes over must end higher than what it passes over. */
function requireHigher(
  members: readonly Member[],
  strands: readonly Strand[],
  crossings: readonly Crossing[],
  order: readonly (0 | 1)[],
): void {
  crossings.forEach(({ passes }, i) => {
    const over = members[strands[passes[order[i]].strand].member];
    const under = members[strands[passes[1 - order[i]].strand].member];
    if (over.top + over.weave.lift > under.top) return;
    throw new AnnuletError({
      code: "weave-too-low",
      message: `${over.name} bridges at ${showLength(over.top + over.weave.lift)}, and ${under.name} below it is ${showLength(under.top)} high`,
      path: `${over.path}.lift`,
      value: over.weave.lift,
      allowed: `above ${showLength(under.top - over.top)}`,
      hint: "lift it higher, or make the other one lower",
    });
  });
}

/** Each crossing has one strand below, which ends twice there: all of these ends must be found. */
function requireAll(
  strip: Strip,
  arcs: readonly Arc[],
  crossings: readonly Crossing[],
  members: readonly Member[],
): void {
  if (!strip.periodic) return;
  const period = strip.period / strip.grid.scale;
  const inPeriod = crossings.filter(({ at: [u] }) => Math.floor(u / period + PHASE) === 0).length;
  const ends = arcs.flatMap((arc) => arc.ends.filter((end) => end !== undefined)).length;
  if (ends === 2 * inPeriod) return;
  throw new AnnuletError({
    code: "weave-too-long",
    message: `a strand of ${members.map(({ name }) => name).join(", ")} runs over more tiles than are worked at once without passing under another`,
    path: members[0].path,
    allowed: "strands that pass under another within two tiles",
    hint: 'say "over": "alternate", or draw more of the weave in one tile',
  });
}

/** Crossings are counted from this share of a period, where none lies by symmetry. */
const PHASE = 0.0137;

function mixed({ name, weave: { over }, path }: Member, first: WeaveSpec): AnnuletError {
  return new AnnuletError({
    code: "weave-mixed",
    message: `${name} is to be woven otherwise than the ribbons before it in its set`,
    path: `${path}.over`,
    value: over,
    allowed: `"${first.over}", as the others`,
    hint: 'say the same of the whole set, or give it a "set" of its own',
  });
}
