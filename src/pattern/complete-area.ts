/**
 * The regions of an area, drawn on a strip of their own and raised or cut, and the lines of their beads.
 *
 * A pattern all the way round is worked on one period, a tile or a cycle of tiles that vary, and a few tiles either
 * side, then cut to one period where the fewest lines cross. One that stops is worked whole and closed by its own
 * walls.
 */

import type { ReadFieldOptions } from "../art/image/frame.js";
import type { HeightField } from "../art/image/height-field.js";
import { imageOf } from "../art/image/load-images.js";
import { readingField } from "../art/image/read-field.js";
import type { Picture } from "../art/image/read-picture.js";
import { ShapeDrawer } from "../art/shapes/draw-shape.js";
import type { Drawing } from "../art/svg/drawing.js";
import { readTexture } from "../art/texture/read-texture.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import type { FriezeName } from "../base/frieze/symmetry.js";
import type { Remember } from "../base/memory.js";
import { about, FORGET } from "../base/memory.js";
import type { Pausing } from "../base/pausing.js";
import { Work } from "../base/work.js";
import { type BeadLines, regionBeads, type TileRun, tileRuns } from "../beads/bead-lines.js";
import { type RailFoot, type RailSides, requireOnSeat, underBy } from "../beads/seat-edge.js";
import type { TilesSpec } from "../design/cycle.js";
import type { EndsSpec } from "../design/pattern/area.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import type { RegionSpec } from "../design/pattern/region.js";
import type { SeatOutline } from "../flat/seat-outline.js";
import { makeStrip, repeatsOf, type Strip, type StripFit } from "../flat/strip.js";
import type { DrawnRegion } from "../relief/drawn-region.js";
import type { FlatBody } from "../relief/flat-body.js";
import { Regions } from "../relief/regions.js";
import { weaveRegions } from "../relief/weave/weave.js";
import { endLines, endOptions, fadeOf } from "./ends.js";
import type { Pattern } from "./laid-out.js";
import { allHoles, carveAll, raiseAll } from "./raise-regions.js";
import { workSteps } from "./work-steps.js";

/** Regions that are worked together on a strip of their own. */
export interface Area {
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
  /** The seat where art is cut off at its edge. Default: none. */
  readonly outline?: SeatOutline | undefined;
}

/** What the areas of a lane have in common. */
export interface AreaOptions {
  /** Height of the lane, mm. */
  readonly seatLength: number;
  readonly rails: RailSides;
  /** How the rails rise from the seat. Default: upright. */
  readonly railFoot?: RailFoot | undefined;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  /** The same of bodies, where they may be coarser than bead lines and what is told. Default: that. */
  readonly bodyTolerance?: number | undefined;
  readonly warn: Warn;
  /** Counts what regions come to. Default: within the default limits. */
  readonly work?: Work | undefined;
  /** Takes over parts of earlier work on the same drawings and tolerances. Default: works everything out. */
  readonly remember?: Remember;
  /** The SVG files that regions name, by name. Default: none. */
  readonly drawings?: ReadonlyMap<string, Drawing>;
  /** The images that regions name, by name. Default: none. */
  readonly images?: ReadonlyMap<string, Picture>;
}

/** Completes the regions of an area, in its own coordinates. */
export function* completeArea(area: Area, runs: readonly TileRun[], options: AreaOptions): Pausing<Pattern> {
  const { fit, symmetry, shapes, regions, where, ends, single, outline } = area;
  const { rails, railFoot, seatLength, tolerance, bodyTolerance, warn, drawings } = options;
  const { remember = FORGET, work = new Work() } = options;
  const strip = makeStrip(fit, symmetry, seatLength, tolerance, {
    ...endOptions(ends),
    single,
    bodyTolerance,
    outline,
  });
  const tileStrip =
    strip.periodic && strip.cycle > 1 && outline === undefined
      ? makeStrip({ ...fit, cycle: 1 }, symmetry, seatLength, tolerance)
      : strip;
  const silent = () => undefined;
  const drawer = new ShapeDrawer(strip, { named: shapes, drawings, warn });
  const tileDrawer =
    tileStrip === strip ? drawer : new ShapeDrawer(tileStrip, { named: shapes, drawings, warn: silent });
  // What stands on every tile has beads alike on every tile, so that their number is a tile's and not a cycle's.
  const drawerFor = (tiles: TilesSpec | undefined) => (tiles === undefined ? tileDrawer : drawer);
  const onStrip = rememberOn(strip, remember);
  const onTile = rememberOn(tileStrip, remember);
  const all = new Regions({ regions, where }, drawer, warn, { remember: onStrip, work });
  const tileRegions = new Regions({ regions, where }, tileDrawer, silent, { remember: onTile, work });
  const drawn = yield* drawRegions(area, strip, all, options);
  const beadsOf = (region: DrawnRegion, i: number): BeadLines[] => {
    if (tileStrip === strip || region.spec.beads === undefined || all.variesByTile(i)) {
      return beadsOn(strip, region, drawer, onStrip);
    }
    return beadsOn(tileStrip, { ...region, art: tileRegions.art(i) }, drawer, onTile);
  };
  const fade = fadeOf(strip, ends, `${where}.ends`);
  const woven = yield* weaveRegions(strip, drawn, fade);
  const lines = endLines(strip, ends, `${where}.ends`);
  const bodies: FlatBody[] = [];
  for (const { op, items } of workSteps([...drawn, ...lines], ({ spec }) => spec.mode)) {
    const how = { fade, warn, remember: onStrip };
    bodies.push(
      ...(yield* op === "add"
        ? raiseAll(strip, items, { ...how, woven, rails, railFoot })
        : carveAll(strip, items, how)),
    );
  }
  const beadLines: BeadLines[] = [];
  for (const [i, region] of drawn.entries()) {
    yield region.path;
    beadLines.push(...beadsOf(region, i));
  }
  return {
    bodies,
    beadLines: [...beadLines, ...tileRuns(runs, drawerFor)],
    height: Math.max(0, ...bodies.map(({ mode, height }) => (mode === "raised" ? height : 0))),
    repeats: repeatsOf(strip),
    holes: yield* allHoles(strip, drawn),
  };
}

/** What is remembered of work on a strip: all of it that is no function is plain. */
function rememberOn(strip: Strip, remember: Remember): Remember {
  return about(remember, [{ ...strip, group: strip.group.name }]);
}

/** The bead lines of a region, unless it has the same as before. */
function beadsOn(strip: Strip, region: DrawnRegion, drawer: ShapeDrawer, remember: Remember): BeadLines[] {
  const { spec, path, name, art } = region;
  if (spec.beads === undefined) return [];
  const of = [art.region, art.border, art.centre];
  const isCut = spec.shape !== undefined && drawer.isCut(spec.shape);
  return remember(["beads", spec, path, name, isCut], of, () => regionBeads(strip, region, isCut, remember));
}

function noRails(path: string): AnnuletError {
  return new AnnuletError({
    code: "no-rails",
    message: "beside the pattern stand no two rails for it to go on beneath",
    path,
    value: true,
    allowed: "false; true on a channel band without lanes",
  });
}

/** The heights of a region whose art they are: an image, or a texture. */
function* fieldOf(
  region: RegionSpec,
  images: AreaOptions["images"],
  options: ReadFieldOptions,
): Pausing<HeightField | undefined> {
  const { image, texture } = region;
  if (image !== undefined) return yield* readingField(region, imageOf(image, images, options.path), options);
  return texture && (yield* readTexture(region, texture, options));
}

const NO_ART = { region: [], border: [], centre: [] } as const;

/** The regions of an area with their art, or their heights where an image gives them. */
function* drawRegions(
  { regions, where, label }: Area,
  strip: Strip,
  all: Regions,
  { rails, railFoot, tolerance, warn, images }: AreaOptions,
): Pausing<DrawnRegion[]> {
  const underRail = rails.includes(true) ? underBy(railFoot, 0) : 0;
  const drawn: DrawnRegion[] = [];
  for (const [i, region] of regions.entries()) {
    const path = `${where}.regions[${i}]`;
    const name = region.name ?? `${label} ${i + 1}`;
    yield path;
    const field = yield* fieldOf(region, images, { strip, tolerance, underRail, path, warn });
    if (field !== undefined) {
      drawn.push({ spec: region, path, name, art: NO_ART, field });
      continue;
    }
    const art = yield* all.making(i);
    if (region.beneath !== true) requireOnSeat(strip, art.region, path);
    else if (rails.includes(false)) throw noRails(`${path}.beneath`);
    drawn.push({ spec: region, path, name, art });
  }
  return drawn;
}
