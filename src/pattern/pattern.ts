/**
 * The flat pattern, complete: raised and cut bodies and the lines of bead runs, from the document's regions.
 *
 * The list of regions is an order of work: what is cut goes through the band and what was raised before it; what comes
 * later is laid over it.
 */

import { imageOf } from "../art/image/load.js";
import type { Picture } from "../art/image/picture.js";
import { readField } from "../art/image/read-field.js";
import { ShapeDrawer } from "../art/shapes/draw-shape.js";
import type { Drawing } from "../art/svg/drawing.js";
import { type Fit, FULL_COVER, type LaneFit } from "../band/fit/fit.js";
import { laneFits } from "../band/fit/fit-lanes.js";
import type { Profile } from "../band/profile/profile.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import type { FriezeName } from "../base/frieze/symmetry.js";
import { showLength } from "../base/units.js";
import { type DrawnRegion, followsTile, regionBeads, type TileRun, tileRuns } from "../beads/bead-lines.js";
import { type RailSides, reachUnder, requireOnSeat } from "../beads/seat-edge.js";
import type { TilesSpec } from "../design/cycle.js";
import { type Lane, lanesOf, noSuchLane } from "../design/lanes.js";
import type { EndsSpec } from "../design/pattern/area.js";
import type { BeadRunSpec } from "../design/pattern/bead-run.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { RegionSpec } from "../design/pattern/region.js";
import type { SectionSpec } from "../design/sections/section.js";
import { countHoles, requireEdgeWall } from "../flat/cut-place.js";
import { takePeriod } from "../flat/period.js";
import { type GridRegion, unite } from "../flat/polygons.js";
import { makeStrip, type Strip, type StripFit } from "../flat/strip.js";
import { tidy } from "../flat/tidy.js";
import { pierceRegion } from "../relief/hole.js";
import { raiseField } from "../relief/image/raise-field.js";
import { sectionOf } from "../relief/region-section.js";
import { Regions } from "../relief/regions.js";
import { type ReliefPolygon, type ReliefShape, raiseRegion } from "../relief/section.js";
import { weaveRegions } from "../relief/weave/weave.js";
import { endLines, endOptions, fadeOf } from "./ends.js";
import type { Carving, Pattern } from "./laid-out.js";
import { joinPatterns, placePattern } from "./move.js";
import { oneTile, stretchesOf } from "./stretches.js";

export interface PatternOptions {
  readonly profile: Pick<Profile, "seatLength" | "rails">;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
  /** The SVG files that regions name, by name. Default: none. */
  readonly drawings?: ReadonlyMap<string, Drawing>;
  /** The images that regions name, by name. Default: none. */
  readonly images?: ReadonlyMap<string, Picture>;
}

const NO_ART = { region: [], border: [], centre: [] } as const;

/** How far relief that reaches the seat's edge goes on beneath the rail, mm, beyond its own rounding. */
const UNDER_RAIL = 0.05;

/** Completes the pattern of a design. `runs` are the document's own bead runs; those that are no paths are left alone. */
export function completePattern(
  spec: PatternSpec,
  runs: readonly BeadRunSpec[],
  fit: Fit,
  options: PatternOptions,
): Pattern {
  const lanes = lanesOf(spec);
  const fits = laneFits(fit, options.profile.seatLength);
  const named = ownRuns(runs, lanes);
  const railed = options.profile.rails !== undefined;
  const patterns = lanes.map((lane, i) => {
    const rails = [railed && i === 0, railed && i === lanes.length - 1] as const;
    const own = completeLane(lane, fits[i], named[i], { ...options, rails, seatLength: fits[i].height });
    return lanes.length === 1 ? own : placePattern(own, [{ u: 0, v: fits[i].v }]);
  });
  requireApart(patterns, lanes);
  return patterns.length === 1 ? patterns[0] : joinPatterns(patterns);
}

/** What the areas of a lane have in common. */
interface LaneOptions extends PatternOptions {
  /** Height of the lane, mm. */
  readonly seatLength: number;
  readonly rails: RailSides;
}

/** Completes a lane, v from its middle line. */
function completeLane(lane: Lane, fit: LaneFit, runs: readonly TileRun[], options: LaneOptions): Pattern {
  const { shapes, symmetry, medallion, ends, where } = lane;
  const { fit: stretch, starts, medallion: place } = stretchesOf(fit);
  const main = completeArea(
    { ...{ fit: stretch, symmetry, shapes, ends }, ...inDocument(lane, where, lane) },
    runs,
    options,
  );
  const patterns = [
    starts.length === 1 && starts[0] === 0
      ? main
      : placePattern(
          main,
          starts.map((u) => ({ u })),
        ),
  ];
  const alone = { shapes, single: true, ends: undefined };
  if (medallion !== undefined && place !== undefined) {
    const { symmetry: own } = medallion;
    const area = { ...alone, fit: place.fit, symmetry: own, ...inDocument(medallion, `${where}.medallion`, lane) };
    patterns.push(placePattern(completeArea(area, [], options), [{ u: place.start }]));
  }
  if (ends?.form === "ornament") {
    const u = fit.repeats * fit.tileWidth;
    requireRoomBeyond(fit, ends.tiles, `${where}.ends.tiles`);
    const { symmetry: own } = ends;
    const area = { ...alone, fit: oneTile(fit, ends.tiles), symmetry: own, ...inDocument(ends, `${where}.ends`, lane) };
    patterns.push(placePattern(completeArea(area, [], options), [{ u }, { u: 0, mirrored: true }]));
  }
  return patterns.length === 1 ? patterns[0] : joinPatterns(patterns);
}

/** Regions that are worked together on a strip of their own. */
interface Area {
  readonly fit: StripFit;
  readonly symmetry: FriezeName;
  readonly shapes: PatternSpec["shapes"];
  readonly regions: readonly RegionSpec[];
  /** Where the regions' owner stands in the document, and what to call regions without a name. */
  readonly where: string;
  readonly label: string;
  readonly ends: EndsSpec | undefined;
  /** Whether it is one tile alone. Default no. */
  readonly single?: boolean;
}

function inDocument(
  { regions }: Pick<Area, "regions">,
  where: string,
  lane: Lane,
): Pick<Area, "regions" | "where" | "label"> {
  const owner = where === lane.where ? [] : [where.slice(lane.where.length + 1)];
  return { regions, where, label: [...(lane.name === "" ? [] : [lane.name]), ...owner, "region"].join(" ") };
}

/** Completes the regions of an area, in its own coordinates. */
function completeArea(
  { fit, symmetry, shapes, regions, where, label, ends, single }: Area,
  runs: readonly TileRun[],
  { rails, seatLength, tolerance, warn, drawings, images }: LaneOptions,
): Pattern {
  const strip = makeStrip(fit, symmetry, seatLength, tolerance, { ...endOptions(ends), single });
  const tileStrip =
    strip.periodic && strip.cycle > 1 ? makeStrip({ ...fit, cycle: 1 }, symmetry, seatLength, tolerance) : strip;
  const silent = () => undefined;
  const drawer = new ShapeDrawer(strip, { named: shapes, drawings, warn });
  const tileDrawer =
    tileStrip === strip ? drawer : new ShapeDrawer(tileStrip, { named: shapes, drawings, warn: silent });
  // What stands on every tile has beads alike on every tile, so that their number is a tile's and not a cycle's.
  const drawerFor = (tiles: TilesSpec | undefined) => (tiles === undefined ? tileDrawer : drawer);
  const all = new Regions({ regions, where }, drawer, warn);
  const tileRegions = new Regions({ regions, where }, tileDrawer, silent);
  const underRail = rails.includes(true) ? UNDER_RAIL : 0;
  const drawn = regions.map((region, i): DrawnRegion => {
    const path = `${where}.regions[${i}]`;
    const name = region.name ?? `${label} ${i + 1}`;
    if (region.image !== undefined) {
      const field = readField(region, imageOf(region.image, images, path), { strip, tolerance, underRail, path, warn });
      return { spec: region, path, name, art: NO_ART, field };
    }
    const art = all.art(i);
    requireOnSeat(strip, art.region, path);
    return { spec: region, path, name, art };
  });
  const beadsOf = (region: DrawnRegion, i: number) => {
    if (tileStrip === strip || region.spec.beads === undefined || all.variesByTile(i)) {
      return regionBeads(strip, region);
    }
    return regionBeads(tileStrip, { ...region, art: tileRegions.art(i) });
  };
  const woven = weaveRegions(strip, drawn);
  const reliefs: ReliefShape[] = [];
  const carvings: Carving[] = [];
  const lines = endLines(strip, ends, `${where}.ends`);
  for (const members of workSteps([...drawn, ...lines])) {
    if (members[0].spec.mode === "raised") reliefs.push(...raiseAll(strip, members, { woven, rails, warn }));
    else carvings.push({ after: reliefs.length, ...carveAll(strip, members, warn) });
  }
  const repeats = strip.periodic ? strip.repeats / strip.cycle : 1;
  const fade = fadeOf(strip, ends, `${where}.ends`);
  const own = { copies: repeats, ...(fade === undefined ? {} : { fade }) };
  return {
    // A height map may come round otherwise than the rest.
    reliefs: reliefs.map((shape) => ({ ...own, ...shape })),
    carvings: carvings.map(({ after, sunk, pierced }) => ({
      ...{ after, sunk: sunk.map((shape) => ({ ...own, ...shape })) },
      pierced: pierced.map((shape) => ({ ...shape, copies: repeats })),
    })),
    beadLines: [...drawn.flatMap(beadsOf), ...tileRuns(runs, drawerFor)],
    height: Math.max(0, ...reliefs.map((shape) => shape.height)),
    repeats,
    holes: allHoles(strip, drawn),
  };
}

/** The document's runs that follow what is drawn in tiles, lane by lane. */
function ownRuns(runs: readonly BeadRunSpec[], lanes: readonly Lane[]): TileRun[][] {
  const found = lanes.map((): TileRun[] => []);
  runs.forEach((run, index) => {
    if (!followsTile(run.along)) return;
    const { lane } = run.along;
    const at = lane === undefined ? 0 : lanes.findIndex(({ name }) => name === lane);
    if (at === -1) throw noSuchLane(lane, lanes, `beads[${index}].along.lane`);
    found[at].push({ run, index });
  });
  return found;
}

/** Bodies of neighbouring lanes that come nearer than this would meet in a line, mm. */
const LANES_APART = 0.01;

/** @throws AnnuletError `lanes-touch` where the bodies of neighbouring lanes meet at their common edge */
function requireApart(patterns: readonly Pattern[], lanes: readonly Lane[]): void {
  const spans = patterns.map(({ reliefs }) => reliefs.flatMap(({ outline }) => outline.flat(2).map(([, v]) => v)));
  for (let i = 1; i < spans.length; i++) {
    const [below, above] = [
      spans[i - 1].reduce((a, b) => Math.max(a, b), -Infinity),
      spans[i].reduce((a, b) => Math.min(a, b), Infinity),
    ];
    if (above - below >= LANES_APART) continue;
    throw new AnnuletError({
      code: "lanes-touch",
      message: `what is raised in ${lanes[i - 1].name} and in ${lanes[i].name} meets between them`,
      path: "pattern.gap",
      value: Number((above - below).toFixed(4)),
      allowed: `at least ${showLength(LANES_APART)} between them`,
      hint: "set a gap, or draw the art of one of them clear of its edge",
    });
  }
}

/** Ornaments stand beyond the ends, both in the plain zone. */
function requireRoomBeyond({ cover, repeats, tileWidth }: LaneFit, wide: number, path: string): void {
  const most = Math.floor(((FULL_COVER / cover - 1) * repeats) / 2);
  if (wide <= most) return;
  throw new AnnuletError({
    code: "ornament-misfit",
    message: `two ornaments of ${showLength(wide * tileWidth)} do not fit into the plain zone`,
    path,
    value: wide,
    allowed: most > 0 ? `1 to ${most}` : "none: the plain zone is narrower than two tiles",
    hint: "make the ornaments narrower, or cover less of the band",
  });
}

/**
 * The pattern of a band without one.
 *
 * @throws AnnuletError `no-pattern` where a bead run follows a path of the tile that is not there
 */
export function noPattern(runs: readonly BeadRunSpec[]): Pattern {
  const lost = runs.findIndex(({ along }) => followsTile(along));
  if (lost === -1) return { reliefs: [], carvings: [], beadLines: [], height: 0, repeats: 1, holes: 0 };
  throw new AnnuletError({
    code: "no-pattern",
    message: "the bead run follows what is drawn in the tile, but the design has no pattern and so no tile",
    path: `beads[${lost}].along.${"shape" in (runs[lost].along as object) ? "shape" : "path"}`,
    allowed: '"rail", "seat-edge" or {"v": …} on a band without pattern',
    hint: 'add "pattern": {} for a tile as square as the seat is long',
  });
}

/** Neighbours in the list that are all raised, or all cut. */
function workSteps(drawn: readonly DrawnRegion[]): DrawnRegion[][] {
  const found: DrawnRegion[][] = [];
  for (const region of drawn) {
    const last = found.at(-1);
    const raised = region.spec.mode === "raised";
    if (last !== undefined && (last[0].spec.mode === "raised") === raised) last.push(region);
    else found.push([region]);
  }
  return found;
}

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
  return section.form === "flat" ? Object.values(section).join(" ") : path;
}

/** The regions as one, cleaned, over the stretch that matters. */
function together(strip: Strip, members: readonly DrawnRegion[], warn: Warn): GridRegion {
  const [{ path, art }] = members;
  const lines = members.filter((one) => one.atEnds);
  const others = members.filter((one) => !one.atEnds);
  const all = members.length === 1 ? art.region : unite(others.flatMap((one) => one.art.region));
  const cut = strip.periodic || others.length === 0 ? all : takePeriod(strip, all);
  const whole =
    lines.length === 0 || others.length === 0 ? cut : unite([...cut, ...lines.flatMap((one) => one.art.region)]);
  return whole === art.region ? whole : tidy(strip, whole, path, warn);
}

const namesOf = (members: readonly DrawnRegion[]) => members.map((one) => one.name);

/** Raises the regions. A drafted foot may go on beneath a rail, but not beyond the edge of a band without rails. */
function raiseAll(strip: Strip, drawn: readonly DrawnRegion[], options: RaiseOptions): ReliefShape[] {
  const { woven, rails, warn } = options;
  const onSeat = (shape: ReliefShape, section: SectionSpec, path: string): ReliefShape => {
    if (section.draft > 0 && rails.includes(false))
      requireOnSeat(strip, outlineRings(strip, shape.outline), `${path}.draft`);
    return shape;
  };
  const plain = drawn.filter((region) => !woven.has(region));
  const shapes = groupBy(plain, sectionKey).flatMap((members) => {
    const [{ field }] = members;
    if (field !== undefined) return raiseField(field, namesOf(members), strip.artTolerance);
    const { section, path } = sectionOf(members[0].spec, members[0].path);
    const clean = together(strip, members, warn);
    const under = rails.includes(true) ? UNDER_RAIL + edgeOf(section) : 0;
    const shape = raiseRegion(strip, reachUnder(strip, clean, under, rails), {
      section,
      names: namesOf(members),
      path,
    });
    return shape === undefined ? [] : onSeat(shape, section, path);
  });
  const bridged = drawn.flatMap((region) => {
    const { section, path } = sectionOf(region.spec, region.path);
    return (woven.get(region) ?? []).map((shape) => onSeat(shape, section, path));
  });
  return [...shapes, ...bridged];
}

interface RaiseOptions {
  /** The bodies of woven regions. */
  readonly woven: ReadonlyMap<DrawnRegion, readonly ReliefShape[]>;
  readonly rails: RailSides;
  readonly warn: Warn;
}

/** mm of the top's edge that a rail should hide. */
function edgeOf(section: SectionSpec): number {
  if (section.form === "flat") return Math.max(section.round, section.bevel);
  return section.form === "hollow" ? section.round : 0;
}

/** The shapes to be cut out. */
function carveAll(strip: Strip, drawn: readonly DrawnRegion[], warn: Warn): Omit<Carving, "after"> {
  const [sunk, pierced] = (["sunk", "pierced"] as const).map((mode) => drawn.filter(({ spec }) => spec.mode === mode));
  return {
    sunk: groupBy(sunk, sectionKey).flatMap((members) => {
      const { section, path } = sectionOf(members[0].spec, members[0].path);
      const [{ field }] = members;
      const shape =
        field === undefined
          ? raiseRegion(strip, together(strip, members, warn), { section, names: namesOf(members), path })
          : raiseField(field, namesOf(members), strip.artTolerance);
      if (shape === undefined) return [];
      requireEdgeWall(strip, outlineRings(strip, shape.outline), members[0].path);
      return { ...shape, path: members[0].spec.section === undefined ? `${path}.depth` : `${path}.height` };
    }),
    pierced: groupBy(pierced, ({ spec }) => `${spec.broken}`).flatMap((members) => {
      const [{ spec, path }] = members;
      const shape = pierceRegion(strip, together(strip, members, warn), {
        broken: spec.broken,
        names: namesOf(members),
        path,
      });
      if (shape === undefined) return [];
      requireEdgeWall(strip, outlineRings(strip, shape.mouth), path);
      return shape;
    }),
  };
}

/** Outlines in mm as rings on the grid. */
function outlineRings(strip: Strip, outline: readonly ReliefPolygon[]): GridRegion {
  const { scale } = strip.grid;
  return outline.flat().map((ring) => ring.map(([u, v]) => ({ x: Math.round(u * scale), y: Math.round(v * scale) })));
}

/** Holes of all pierced regions; those that overlap are one. */
function allHoles(strip: Strip, drawn: readonly DrawnRegion[]): number {
  const pierced = drawn.filter(({ spec }) => spec.mode === "pierced");
  if (pierced.length === 0) return 0;
  return countHoles(
    strip,
    together(strip, pierced, () => undefined),
    pierced[0].path,
  );
}
