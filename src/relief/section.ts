/**
 * A region raised by its section: contours of its outline at the section's levels.
 *
 * The band between two contours is a polygon with holes whose vertices take the height of their own contour, so that
 * neighbouring pieces share vertices and the body closes by construction. What a higher contour does not reach is closed
 * level.
 */

import { largestWhere } from "../base/math/largest.js";
import type { Point3 } from "../base/math/point.js";
import { BREATH, finish, type Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import type { SectionSpec } from "../design/sections/section.js";
import { ringBox } from "../flat/box.js";
import {
  bandAcross,
  chooseCut,
  cutAcross,
  cutToCell,
  type LevelPoint,
  type LevelPolygon,
  type LevelRing,
  nestRings,
} from "../flat/cell.js";
import type { GridPath } from "../flat/grid.js";
import { keepsParts } from "../flat/keeps-parts.js";
import { lengthen } from "../flat/lengthen.js";
import { narrowestPlace } from "../flat/narrowest.js";
import { takePeriod } from "../flat/period.js";
import { type GridRegion, shrink } from "../flat/polygons.js";
import { clearRing, repeatsOf, type Strip, steps } from "../flat/strip.js";
import { coarseBody } from "./coarse-body.js";
import { followedContours, type Level, plainContours, widestInset } from "./contours.js";
import type { Fade, FlatBody, ReliefPolygon } from "./flat-body.js";
import { edgeTooLarge } from "./sections/flat.js";
import { drawSection } from "./sections/index.js";
import type { SectionLine } from "./sections/section-form.js";

export interface SectionOptions {
  readonly section: SectionSpec;
  readonly mode: "raised" | "sunk";
  readonly names: readonly string[];
  /** Where the section stands in the document, for errors. */
  readonly path: string;
  /** Where the body stands in the document; of what is sunk, where its depth does. */
  readonly where: string;
  readonly fade: Fade | undefined;
  /** Whether walls stand along the radius. Default no: along the surface's normal. */
  readonly upright?: boolean | undefined;
  /**
   * mm from the strip's middle line to where the body is cut off as it stands, its section that of the whole region: its
   * volume is then not that of what is left of the outline. Default: nothing is cut off.
   */
  readonly across?: number | undefined;
}

/**
 * Raises a region.
 *
 * @throws AnnuletError `round-too-large`, `bevel-too-large` where the edge of a flat top is higher than the region or
 *   wider than half of its narrowest place, with that width and its place; `section-misfit`
 */
export function raiseRegion(strip: Strip, region: GridRegion, options: SectionOptions): FlatBody | undefined {
  return finish(raisingRegion(strip, region, options));
}

/** The same in pieces. */
export function* raisingRegion(
  strip: Strip,
  region: GridRegion,
  options: SectionOptions,
): Pausing<FlatBody | undefined> {
  if (region.length === 0) return undefined;
  return yield* coarseBody(strip, region, (bodies, outline) => raiseOutline(bodies, outline, options));
}

function* raiseOutline(strip: Strip, region: GridRegion, options: SectionOptions): Pausing<FlatBody> {
  const { section, mode, names, path, where, fade, across, upright = false } = options;
  const line = yield* drawingLine(strip, region, section, path);
  yield BREATH;
  const reach = Math.max(...line.map(([d]) => Math.abs(d)));
  const whole = () => lengthen(strip, region, steps(strip, reach));
  const near = strip.periodic && reach <= NEAR_ROUND * strip.tileWidth ? takePeriod(strip, region, 1) : whole();
  const flat = section.form === "flat";
  const levels = yield* flat ? plainContours(strip, near, line) : followedContours(strip, near, line);
  yield BREATH;
  // Where the cut-off ends of `near` come apart, the whole region decides.
  if (flat && firstLoss(strip, near, levels) !== undefined) yield* requireEdge(strip, whole(), line, section, path);
  const { bands, last, outline, seam } = yield* stackLevels(
    strip,
    levels,
    across === undefined ? undefined : Math.round(steps(strip, across)),
  );
  return {
    mode,
    names,
    path: where,
    made: [...Object.entries(section).flat(), upright].join(" "),
    upright,
    top: [...bands, ...last],
    surface: undefined,
    outline,
    throat: [],
    seam,
    period: undefined,
    copies: repeatsOf(strip),
    height: Math.max(...levels.map(({ h }) => h)),
    rise: undefined,
    fade,
  };
}

/** The section's line for a region: its reach, where none is stated, ends in the middle of the region's widest place. */
export function sectionLine(strip: Strip, region: GridRegion, section: SectionSpec, path: string): SectionLine {
  return finish(drawingLine(strip, region, section, path));
}

/** The same in pieces. */
function* drawingLine(strip: Strip, region: GridRegion, section: SectionSpec, path: string): Pausing<SectionLine> {
  const find = () => {
    const tallest = Math.max(...region.map((ring) => ringHeight(ring)));
    return widestInset(strip, lengthen(strip, region, tallest / 2));
  };
  // Only a section that states no reach asks for it.
  const asks = section.form === "ridge" || ("reach" in section && section.reach === undefined);
  const found = asks ? yield* find() : undefined;
  return drawSection(section, { reach: () => found ?? finish(find()), tolerance: strip.artTolerance, path });
}

/** Contours cut to one period. */
export interface Stack extends Pick<FlatBody, "outline" | "seam"> {
  /** The surface from each contour to the next. */
  readonly bands: readonly ReliefPolygon[];
  /** What the last contour encloses. */
  readonly last: readonly ReliefPolygon[];
}

/**
 * Contours, each inside the one before, as the surface over them.
 *
 * @param half grid steps from the middle line to where all is cut off; default nowhere
 */
export function* stackLevels(strip: Strip, levels: readonly Level[], half?: number): Pausing<Stack> {
  const drawn = levels.map(({ rings, h }) => rings.map((ring) => ring.map(({ x, y }): LevelPoint => ({ x, y, h }))));
  const contour = half === undefined ? drawn : cutAcross(drawn, half);
  const bandOf = (i: number) =>
    half === undefined ? [...drawn[i], ...drawn[i + 1].map(reversed)] : bandAcross(drawn[i], drawn[i + 1], half);
  const left = strip.periodic ? chooseCut(contour.flat(), strip.grid.tile, { period: strip.period }) : 0;
  const cut = (parts: readonly LevelRing[]) =>
    strip.periodic ? cutToCell(parts, left, strip.period) : nestRings(parts);
  const bands: LevelPolygon[] = [];
  for (let i = 0; i + 1 < contour.length; i++) {
    yield BREATH;
    bands.push(...cut(bandOf(i)));
  }
  yield BREATH;
  const { scale } = strip.grid;
  const flat = (polygon: LevelPolygon): ReliefPolygon =>
    [polygon.outer, ...polygon.holes].map((ring) => ring.map(({ x, y, h }): Point3 => [x / scale, y / scale, h]));
  return {
    bands: bands.map(flat),
    last: cut(contour[contour.length - 1]).map(flat),
    outline: cut(contour[0]).map(flat),
    seam: strip.periodic ? [left / scale, (left + strip.period) / scale] : undefined,
  };
}

/**
 * Insets up to this many tile widths leave the cell alone where the region is cut off a fifth of a tile beyond it.
 */
const NEAR_ROUND = 0.05;

function ringHeight(ring: GridPath): number {
  const { low, high } = ringBox(ring);
  return high - low;
}

function reversed(ring: LevelRing): LevelRing {
  return [...ring].reverse();
}

/**
 * The first contour inside the outline at which a part of the region, or a hole, is lost or comes apart; undefined where
 * none does. A part that ends in a tip, or in a tail, only becomes lower there.
 */
function firstLoss(strip: Strip, region: GridRegion, levels: readonly Level[]): Level | undefined {
  const counts = (ring: GridPath) => clearRing(strip, ring);
  return levels.find(({ inset, rings }) => inset > 0 && !keepsParts(region, rings, counts));
}

function* requireEdge(
  strip: Strip,
  region: GridRegion,
  line: SectionLine,
  section: Extract<SectionSpec, { form: "flat" }>,
  path: string,
): Pausing<void> {
  const lost = firstLoss(strip, region, yield* plainContours(strip, region, line));
  if (lost === undefined) return;
  const counts = (ring: GridPath) => clearRing(strip, ring);
  const reach = largestWhere(0, lost.inset, (distance) =>
    keepsParts(region, shrink(region, steps(strip, distance), strip.arcTolerance), counts),
  );
  const place = narrowestPlace(strip, region, reach);
  const field = section.bevel > 0 ? "bevel" : "round";
  throw edgeTooLarge({
    path,
    field,
    value: section[field],
    largest: reach,
    why: `the region is only ${showLength(2 * reach)} wide at its narrowest, near x ${place.x.toFixed(3)}, y ${place.y.toFixed(3)} of the tile`,
  });
}
