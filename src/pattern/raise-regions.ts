/**
 * Drawn regions as bodies: those that are alike united first, then raised, sunk or pierced.
 */

import { AnnuletError, type Warn } from "../base/errors.js";
import type { Point3 } from "../base/math/point.js";
import { type Remember, rememberPausing } from "../base/memory.js";
import { BREATH, type Pausing } from "../base/pausing.js";
import { radians } from "../base/units.js";
import { type RailFoot, type RailSides, reachUnder, requireOnSeat, underBy } from "../beads/seat-edge.js";
import type { SectionSpec } from "../design/sections/section.js";
import { countHoles, EDGE_WALL, requireEdgeWall } from "../flat/cut-place.js";
import { takePeriod } from "../flat/period.js";
import { type GridRegion, unite } from "../flat/polygons.js";
import type { Strip } from "../flat/strip.js";
import { tidying } from "../flat/tidy.js";
import { type SeatCut, withinSeat } from "../flat/within-seat.js";
import type { DrawnRegion } from "../relief/drawn-region.js";
import type { Fade, FlatBody, ReliefPolygon } from "../relief/flat-body.js";
import { raisingField } from "../relief/image/raise-field.js";
import { piercingRegion } from "../relief/pierce-region.js";
import { sectionOf } from "../relief/region-section.js";
import { raisingRegion } from "../relief/section.js";

export interface RaiseOptions {
  /** The bodies of woven regions. */
  readonly woven: ReadonlyMap<DrawnRegion, readonly FlatBody[]>;
  readonly rails: RailSides;
  readonly railFoot: RailFoot | undefined;
  readonly fade: Fade | undefined;
  readonly warn: Warn;
  /** Of work on the strip. */
  readonly remember: Remember;
}

/** Raises the regions. A drafted foot may go on beneath a rail, but not beyond the edge of a band without rails. */
export function* raiseAll(strip: Strip, drawn: readonly DrawnRegion[], options: RaiseOptions): Pausing<FlatBody[]> {
  const { woven, rails, railFoot, fade, remember } = options;
  const { warn: noting, said } = counted(options.warn);
  const onSeat = (body: FlatBody, section: SectionSpec, path: string): FlatBody => {
    if (section.draft > 0 && rails.includes(false))
      requireOnSeat(strip, outlineRings(strip, body.outline), `${path}.draft`);
    return body;
  };
  const plain = drawn.filter((region) => !woven.has(region));
  const bodies = yield* eachGroup(groupBy(plain, sectionKey), function* (members) {
    const [{ field, path: where, spec }] = members;
    const { upright } = spec;
    const own = { mode: "raised", names: namesOf(members), where, fade } as const;
    if (field !== undefined) {
      return [yield* raisingField(field, { ...own, upright, tolerance: strip.bodyTolerance })];
    }
    const { section, path } = sectionOf(members[0].spec, where);
    const by = ["body", own, section, path, upright, rails, railFoot, endsOf(members), placesOf(members)];
    const make = function* () {
      const under = rails.includes(true) ? underBy(railFoot, edgeOf(section)) : 0;
      const beyond = rails.includes(true) ? under : -spreadOf(section);
      const fillet = under > 0 && railFoot !== undefined && railFoot.root > 0;
      const goesOn = members[0].spec.beneath === true;
      const clean = yield* together(strip, members, noting, {
        beyond,
        need: needOf(section),
        under: goesOn ? 0 : under,
        rails,
        fillet: fillet && !goesOn,
      });
      const across = goesOn ? strip.halfSeat / strip.grid.scale + under : undefined;
      const body = yield* raisingRegion(strip, clean, { ...own, section, path, across, upright });
      return body === undefined ? [] : [onSeat(withMembers(strip, body, members), section, path)];
    };
    return yield* rememberPausing(remember, { by, of: artsOf(members), said }, make);
  });
  const bridged = drawn.flatMap((region) => {
    const { section, path } = sectionOf(region.spec, region.path);
    return (woven.get(region) ?? []).map((body) => onSeat(body, section, path));
  });
  return [...bodies, ...bridged];
}

/** The bodies to be cut out: what is sunk, then what is pierced. */
export function* carveAll(
  strip: Strip,
  drawn: readonly DrawnRegion[],
  { fade, warn, remember }: Pick<RaiseOptions, "fade" | "warn" | "remember">,
): Pausing<FlatBody[]> {
  const { warn: noting, said } = counted(warn);
  const [sunk, pierced] = (["sunk", "pierced"] as const).map((mode) => drawn.filter(({ spec }) => spec.mode === mode));
  const pits = yield* eachGroup(groupBy(sunk, sectionKey), function* (members) {
    const [{ spec, field, path: region }] = members;
    const { section, path } = sectionOf(spec, region);
    const where = spec.section === undefined ? `${path}.depth` : `${path}.height`;
    const own = { mode: "sunk", names: namesOf(members), where, fade } as const;
    const { upright } = spec;
    const reach = { ...cutBy(spreadOf(section)), need: needOf(section) };
    const make = function* () {
      const body =
        field === undefined
          ? yield* raisingRegion(strip, yield* together(strip, members, noting, reach), {
              ...own,
              section,
              path,
              upright,
            })
          : yield* raisingField(field, { ...own, upright, tolerance: strip.bodyTolerance });
      if (body === undefined) return [];
      requireEdgeWall(strip, outlineRings(strip, body.outline), region);
      return [withMembers(strip, body, members)];
    };
    if (field !== undefined) return yield* make();
    const by = ["body", own, section, path, upright, region, endsOf(members), placesOf(members)];
    return yield* rememberPausing(remember, { by, of: artsOf(members), said }, make);
  });
  const holes = yield* eachGroup(groupBy(pierced, holeKey), function* (members) {
    const [{ spec, path }] = members;
    const { broken } = spec;
    const names = namesOf(members);
    const by = ["hole", broken, names, path, endsOf(members), placesOf(members)];
    return yield* rememberPausing(remember, { by, of: artsOf(members), said }, function* () {
      const region = yield* together(strip, members, noting, cutBy(broken));
      const body = yield* piercingRegion(strip, region, { broken, names, path });
      if (body === undefined) return [];
      requireEdgeWall(strip, outlineRings(strip, body.outline), path);
      return [withMembers(strip, body, members)];
    });
  });
  return [...pits, ...holes];
}

/** Warns, and counts what is said. */
function counted(warn: Warn): { readonly warn: Warn; readonly said: () => number } {
  let count = 0;
  return {
    warn: (warning) => {
      count++;
      warn(warning);
    },
    said: () => count,
  };
}

/** The bodies of each group of regions. */
function* eachGroup(
  groups: readonly (readonly DrawnRegion[])[],
  make: (members: readonly DrawnRegion[]) => Pausing<readonly FlatBody[]>,
): Pausing<FlatBody[]> {
  const bodies: FlatBody[] = [];
  for (const members of groups) {
    yield members[0].path;
    bodies.push(...(yield* make(members)));
  }
  return bodies;
}

/** Holes of all pierced regions; those that overlap are one. */
export function* allHoles(strip: Strip, drawn: readonly DrawnRegion[]): Pausing<number> {
  const pierced = drawn.filter(({ spec }) => spec.mode === "pierced");
  if (pierced.length === 0) return 0;
  const cut = (members: readonly DrawnRegion[], broken: number) =>
    together(strip, members, () => undefined, cutBy(broken));
  if (strip.edge === undefined) return countHoles(strip, yield* cut(pierced, 0), pierced[0].path);
  const groups: GridRegion[] = [];
  for (const members of groupBy(pierced, holeKey)) groups.push(yield* cut(members, members[0].spec.broken));
  return countHoles(strip, unite(groups.flat()), pierced[0].path);
}

/** Holes whose edges are broken alike are united first. */
const holeKey = ({ spec }: DrawnRegion) => `${spec.broken}`;

/** Regions of the same key. */
function groupBy(drawn: readonly DrawnRegion[], keyOf: (region: DrawnRegion) => string): DrawnRegion[][] {
  const groups = new Map<string, DrawnRegion[]>();
  for (const region of drawn) groups.set(keyOf(region), [...(groups.get(keyOf(region)) ?? []), region]);
  return [...groups.values()];
}

/**
 * Flat sections that are alike are united first, so that no two tops lie in each other. Others stay apart: where no reach
 * is stated, theirs is that of the region alone.
 */
function sectionKey({ spec, path, field }: DrawnRegion): string {
  if (field !== undefined) return path;
  const { section } = sectionOf(spec, path);
  return section.form === "flat"
    ? `${Object.values(section).join(" ")} ${spec.beneath === true} ${spec.upright === true}`
    : path;
}

/** How regions end at the seat's edge. */
interface EdgeReach extends SeatCut {
  /** mm that they go on beneath a rail, and where rails stand. */
  readonly under: number;
  readonly rails: RailSides;
  /** Whether they go through a fillet. Default no. */
  readonly fillet?: boolean;
}

/** Cut off this much farther from the edge than is asked for, mm: outlines are straightened by less. */
const CUT_SLACK = 2e-3;

/** Of regions that are cut into the seat and grow by so many mm: the wall beside the edge stays. */
function cutBy(grows: number): EdgeReach {
  return { beyond: -(EDGE_WALL + CUT_SLACK + grows), under: 0, rails: [false, false] };
}

/** mm by which the outline of a drafted section's foot, or of a drafted pit's mouth, stands out. */
function spreadOf(section: SectionSpec): number {
  const wall = "wall" in section ? section.wall : section.height;
  return wall * Math.tan(radians(section.draft));
}

/** Rounded edges need this much more than themselves on either side, mm (chosen). */
const NEED_MORE = 0.01;

/** Half of the narrowest width that a section's rounded or bevelled edges need, mm. */
function needOf(section: SectionSpec): number {
  const edges = [edgeOf(section), "radius" in section ? section.radius : 0].reduce((a, b) => Math.max(a, b));
  return edges === 0 ? 0 : edges + NEED_MORE;
}

/** The regions as one, cleaned, over the span that matters, and cut off at the seat's edge or led on beneath its rails. */
function* together(
  strip: Strip,
  members: readonly DrawnRegion[],
  warn: Warn,
  { under, rails, fillet = false, ...cutOff }: EdgeReach,
): Pausing<GridRegion> {
  const [{ path, art }] = members;
  const lines = members.filter((one) => one.atEnds);
  const others = members.filter((one) => !one.atEnds);
  const all = members.length === 1 ? art.region : unite(others.flatMap((one) => one.art.region));
  const cut = strip.periodic || others.length === 0 ? all : takePeriod(strip, all);
  const whole =
    lines.length === 0 || others.length === 0 ? cut : unite([...cut, ...lines.flatMap((one) => one.art.region)]);
  yield BREATH;
  const clean = function* (region: GridRegion): Pausing<GridRegion> {
    yield BREATH;
    return region === art.region ? region : yield* tidying(strip, region, path, warn);
  };
  const longer = (region: GridRegion) => reachUnder(strip, region, under, rails);
  // Through a fillet sides go on so far that they may meet.
  const through = (region: GridRegion) => (fillet ? unite(longer(region)) : longer(region));
  const uncut = function* () {
    return fillet ? yield* clean(through(whole)) : longer(yield* clean(whole));
  };
  const left = yield* strip.edge === undefined ? uncut() : clean(withinSeat(strip, through(whole), cutOff));
  if (left.length === 0) throw cutAway(path);
  return left;
}

/** Of what is drawn nothing lies where the pattern is. */
function cutAway(path: string): AnnuletError {
  return new AnnuletError({
    code: "region-vanishes",
    message: "nothing of the region is left within the edges of the seat and the ends of the pattern",
    path,
    allowed: "art that lies at least in part where the pattern is",
    hint: "move it inwards, or leave it out",
  });
}

const artsOf = (members: readonly DrawnRegion[]) => members.map(({ art }) => art.region);

const endsOf = (members: readonly DrawnRegion[]) => members.map(({ atEnds }) => atEnds === true);

const placesOf = (members: readonly DrawnRegion[]) => members.map(({ path }) => path);

/** Of several regions that are one body, each with its own art, so that a place in it is known to be in one of them. */
function withMembers({ grid }: Strip, body: FlatBody, drawn: readonly DrawnRegion[]): FlatBody {
  if (drawn.length === 1) return body;
  const outlineOf = ({ art }: DrawnRegion): ReliefPolygon =>
    art.region.map((ring) => ring.map(({ x, y }): Point3 => [x / grid.scale, y / grid.scale, 0]));
  return { ...body, members: drawn.map((one) => ({ name: one.name, path: one.path, outline: outlineOf(one) })) };
}

const namesOf = (members: readonly DrawnRegion[]) => members.map((one) => one.name);

/** mm of the top's edge that a rail should hide. */
function edgeOf(section: SectionSpec): number {
  if (section.form === "flat") return Math.max(section.round, section.bevel);
  return section.form === "hollow" ? section.round : 0;
}

/** Outlines in mm as rings on the grid. */
function outlineRings(strip: Strip, outline: readonly ReliefPolygon[]): GridRegion {
  const { scale } = strip.grid;
  return outline.flat().map((ring) => ring.map(([u, v]) => ({ x: Math.round(u * scale), y: Math.round(v * scale) })));
}
