/**
 * The flat pattern, complete: raised and cut bodies and the lines of bead runs, from the document's regions.
 *
 * The list of regions is an order of work: what is cut goes through the band and what was raised before it; what comes
 * later is laid over it.
 */
import { AnnuletError, type Warn } from "../errors.js";
import type { Profile } from "../profile/profile.js";
import { type BeadLines, type DrawnRegion, followsTile, regionBeads, tileRuns } from "./bead-lines.js";
import { countHoles, requireEdgeWall } from "./cut-place.js";
import type { TilesSpec } from "./cycle.js";
import type { Fit } from "./fit.js";
import { type HoleShape, pierceRegion } from "./hole.js";
import { takePeriod } from "./period.js";
import { type GridRegion, unite } from "./polygons.js";
import { sectionOf } from "./region-section.js";
import { Regions } from "./regions.js";
import type { BeadRunSpec, PatternSpec } from "./schema.js";
import { reachUnder, requireOnSeat } from "./seat-edge.js";
import { type ReliefPolygon, type ReliefShape, raiseRegion } from "./section.js";
import type { SectionSpec } from "./sections/index.js";
import { ShapeDrawer } from "./shapes/draw-shape.js";
import { makeStrip, type Strip } from "./strip.js";
import type { Drawing } from "./svg/drawing.js";
import { tidy } from "./tidy.js";

/** A completed pattern. */
export interface Pattern {
  readonly reliefs: readonly ReliefShape[];
  /** What is cut out, in order. */
  readonly carvings: readonly Carving[];
  readonly beadLines: readonly BeadLines[];
  /** Height of the highest region above the seat, mm; 0 where there is none. */
  readonly height: number;
  /** Equal units, tiles or cycles of them, that make the whole round: 1 where there is no pattern or it stops. */
  readonly repeats: number;
  /** Holes through the whole ring. */
  readonly holes: number;
}

/** Sunk and pierced regions that are cut at one time. */
export interface Carving {
  /** How many of the reliefs were there before, and are cut too. */
  readonly after: number;
  /** Their heights are depths. */
  readonly sunk: readonly SunkShape[];
  readonly pierced: readonly HoleShape[];
}

/** A sunk region: the shape to be cut out, upside down. */
export interface SunkShape extends ReliefShape {
  /** Where its depth stands in the document. */
  readonly path: string;
}

export interface PatternOptions {
  readonly profile: Pick<Profile, "seatLength" | "rails">;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
  /** The SVG files that regions name, by name. Default: none. */
  readonly drawings?: ReadonlyMap<string, Drawing>;
}

/** How far relief that reaches the seat's edge goes on beneath the rail, mm, beyond its own rounding. */
const UNDER_RAIL = 0.05;

/** Completes the pattern of a design. `runs` are the document's own bead runs; those that are no paths are left alone. */
export function completePattern(
  spec: PatternSpec,
  runs: readonly BeadRunSpec[],
  fit: Fit,
  { profile, tolerance, warn, drawings }: PatternOptions,
): Pattern {
  const strip = makeStrip(fit, spec.symmetry, profile.seatLength, tolerance);
  const oneTile =
    strip.periodic && strip.cycle > 1
      ? makeStrip({ ...fit, cycle: 1 }, spec.symmetry, profile.seatLength, tolerance)
      : strip;
  const silent = () => undefined;
  const drawer = new ShapeDrawer(strip, { named: spec.shapes, drawings, warn });
  const tileDrawer =
    oneTile === strip ? drawer : new ShapeDrawer(oneTile, { named: spec.shapes, drawings, warn: silent });
  // What stands on every tile has beads alike on every tile, so that their number is a tile's and not a cycle's.
  const drawerFor = (tiles: TilesSpec | undefined) => (tiles === undefined ? tileDrawer : drawer);
  const regions = new Regions(spec.regions, drawer, warn);
  const tileRegions = new Regions(spec.regions, tileDrawer, silent);
  const drawn = spec.regions.map((region, i): DrawnRegion => {
    const path = `pattern.regions[${i}]`;
    const art = regions.art(i);
    requireOnSeat(strip, art.region, path);
    return { spec: region, path, name: region.name ?? `region ${i + 1}`, art };
  });
  const beadsOf = (region: DrawnRegion, i: number) => {
    if (oneTile === strip || region.spec.beads === undefined || regions.variesByTile(i)) {
      return regionBeads(strip, region);
    }
    return regionBeads(oneTile, { ...region, art: tileRegions.art(i) });
  };
  const underRail = profile.rails === undefined ? 0 : UNDER_RAIL;
  const reliefs: ReliefShape[] = [];
  const carvings: Carving[] = [];
  for (const members of workSteps(drawn)) {
    if (members[0].spec.mode === "raised") reliefs.push(...raiseAll(strip, members, underRail, warn));
    else carvings.push({ after: reliefs.length, ...carveAll(strip, members, warn) });
  }
  return {
    reliefs,
    carvings,
    beadLines: [...drawn.flatMap(beadsOf), ...tileRuns(runs, drawerFor)],
    height: Math.max(0, ...reliefs.map((shape) => shape.height)),
    repeats: strip.periodic ? strip.repeats / strip.cycle : 1,
    holes: allHoles(strip, drawn),
  };
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
function sectionKey({ spec, path }: DrawnRegion): string {
  const { section } = sectionOf(spec, path);
  return section.form === "flat" ? Object.values(section).join(" ") : path;
}

/** The regions as one, cleaned, over the stretch that matters. */
function together(strip: Strip, members: readonly DrawnRegion[], warn: Warn): GridRegion {
  const [{ path, art }] = members;
  const all = members.length === 1 ? art.region : unite(members.flatMap((one) => one.art.region));
  const whole = strip.periodic ? all : takePeriod(strip, all);
  return whole === art.region ? whole : tidy(strip, whole, path, warn);
}

const namesOf = (members: readonly DrawnRegion[]) => members.map((one) => one.name);

/** Raises the regions. A drafted foot may go on beneath a rail, but not beyond the edge of a band without rails. */
function raiseAll(strip: Strip, drawn: readonly DrawnRegion[], underRail: number, warn: Warn): ReliefShape[] {
  return groupBy(drawn, sectionKey).flatMap((members) => {
    const { section, path } = sectionOf(members[0].spec, members[0].path);
    const clean = together(strip, members, warn);
    const under = underRail > 0 ? underRail + edgeOf(section) : 0;
    const shape = raiseRegion(strip, reachUnder(strip, clean, under), { section, names: namesOf(members), path });
    if (shape === undefined) return [];
    if (section.draft > 0 && underRail === 0) requireOnSeat(strip, outlineRings(strip, shape.outline), `${path}.draft`);
    return shape;
  });
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
      const clean = together(strip, members, warn);
      const shape = raiseRegion(strip, clean, { section, names: namesOf(members), path });
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
