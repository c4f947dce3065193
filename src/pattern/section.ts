/**
 * The section of a raised region: its outline, and its top edge rounded by contours at rising levels.
 *
 * A quarter round of radius ρ is cut at k + 1 angles φ: contour i is the outline shrunk by ρ (1 − cos φ) at height
 * H − ρ (1 − sin φ). The band between two contours is a polygon with holes whose vertices take the height of their own
 * contour, so that neighbouring pieces share vertices and the body closes by construction.
 */
import { AnnuletError } from "../errors.js";
import { chordCount } from "../math/curve.js";
import { largestWhere } from "../math/largest.js";
import type { Point3 } from "../math/point.js";
import { showLength } from "../units.js";
import { chooseCut, cutToCell, type LevelPoint, type LevelPolygon, type LevelRing, nestRings } from "./cell.js";
import type { GridPath } from "./grid.js";
import { narrowestPlace } from "./narrowest.js";
import { keepsParts } from "./parts.js";
import { takePeriods } from "./period.js";
import { type GridRegion, shrink } from "./polygons.js";
import { clearRing, type Strip, steps } from "./strip.js";

/** A polygon above the seat: the outer ring counter-clockwise seen from outside, then its holes; points are (u, v, h). */
export type ReliefPolygon = readonly (readonly Point3[])[];

/** A raised body over one period of the strip, or over the whole of it. */
export interface ReliefShape {
  /** Names of the regions in it. */
  readonly names: readonly string[];
  /** The upper surface without the upright walls; (u, v, h), mm. */
  readonly top: readonly ReliefPolygon[];
  /** The outline at the foot of the rounding, from which the walls go down. */
  readonly outline: readonly ReliefPolygon[];
  /** u of the two sides that neighbouring tiles share, mm; undefined where the body ends by itself. */
  readonly seam: readonly [left: number, right: number] | undefined;
  /** mm above the seat. */
  readonly height: number;
}

export interface SectionOptions {
  /** Height of the top above the seat, mm. */
  readonly height: number;
  /** Radius of the rounded top edge, mm; 0 is sharp. */
  readonly round: number;
  readonly names: readonly string[];
  /** Where it stands in the document, for errors. */
  readonly path: string;
}

/**
 * Raises a region.
 *
 * @throws AnnuletError `round-too-large` where the rounding is higher than the region or wider than half of its
 *   narrowest place, with that width and its place
 */
export function raiseRegion(strip: Strip, region: GridRegion, options: SectionOptions): ReliefShape | undefined {
  if (region.length === 0) return undefined;
  const { height, round, names } = options;
  if (round > height) throw roundError(options, height, "the region is only so high");
  const near = strip.periodic && round <= NEAR_ROUND * strip.tileWidth ? takePeriods(strip, region, 1, 2) : region;
  const levels = contours(strip, near, options);
  // Where the cut-off ends of `near` come apart, the whole region decides.
  if (round > 0 && firstLoss(strip, near, levels) !== -1) requireRound(strip, region, options);
  const contour = levels.map(({ rings, h }) => rings.map((ring) => ring.map(({ x, y }): LevelPoint => ({ x, y, h }))));
  const left = strip.periodic ? chooseCut(contour.flat(), strip.grid.tile) : 0;
  const cut = (parts: readonly LevelRing[]) =>
    strip.periodic ? cutToCell(parts, left, strip.grid.tile) : nestRings(parts);
  const top: LevelPolygon[] = [];
  for (let i = 0; i + 1 < contour.length; i++) top.push(...cut([...contour[i], ...contour[i + 1].map(reversed)]));
  top.push(...cut(contour[contour.length - 1]));
  const { scale, tile } = strip.grid;
  const flat = (polygon: LevelPolygon): ReliefPolygon =>
    [polygon.outer, ...polygon.holes].map((ring) => ring.map(({ x, y, h }): Point3 => [x / scale, y / scale, h]));
  return {
    names,
    top: top.map(flat),
    outline: cut(contour[0]).map(flat),
    seam: strip.periodic ? [left / scale, (left + tile) / scale] : undefined,
    height,
  };
}

/**
 * A rounding up to this many tile widths leaves the cell alone where the region is cut off a fifth of a tile beyond it.
 */
const NEAR_ROUND = 0.05;

/** A contour of the region. */
interface Level {
  readonly rings: GridRegion;
  /** mm inside the outline. */
  readonly inset: number;
  /** mm above the seat. */
  readonly h: number;
}

/** The outline and the contours above it. */
function contours(strip: Strip, region: GridRegion, { height, round }: SectionOptions): Level[] {
  const count = round === 0 ? 0 : chordCount(round, Math.PI / 2, strip.artTolerance);
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = count === 0 ? Math.PI / 2 : ((Math.PI / 2) * i) / count;
    const inset = round * (1 - Math.cos(angle));
    const h = height - round * (1 - Math.sin(angle));
    const rings = i === 0 ? region : shrink(region, steps(strip, inset), strip.arcTolerance);
    return { rings, inset, h };
  });
}

function reversed(ring: LevelRing): LevelRing {
  return [...ring].reverse();
}

/**
 * The first level at which a part of the region, or a hole, is lost or comes apart; −1 where none does. A part that ends
 * in a tip, or in a tail, only becomes lower there.
 */
function firstLoss(strip: Strip, region: GridRegion, levels: readonly Level[]): number {
  return levels.findIndex(({ rings }) => !keepsParts(region, rings, (ring) => clearRing(strip, ring)));
}

function requireRound(strip: Strip, region: GridRegion, options: SectionOptions): void {
  const levels = contours(strip, region, options);
  const failing = firstLoss(strip, region, levels);
  if (failing === -1) return;
  const counts = (ring: GridPath) => clearRing(strip, ring);
  const reach = largestWhere(0, levels[failing].inset, (distance) =>
    keepsParts(region, shrink(region, steps(strip, distance), strip.arcTolerance), counts),
  );
  const place = narrowestPlace(strip, region, reach);
  throw roundError(
    options,
    reach,
    `the region is only ${showLength(2 * reach)} wide at its narrowest, near x ${place.x.toFixed(3)}, y ${place.y.toFixed(3)} of the tile`,
  );
}

function roundError(options: SectionOptions, largest: number, why: string): AnnuletError {
  return new AnnuletError({
    code: "round-too-large",
    message: `a top edge rounded by ${showLength(options.round)} does not fit: ${why}`,
    path: `${options.path}.round`,
    value: options.round,
    allowed: `0 to ${showLength(Math.floor(largest * 1000) / 1000)}`,
    hint: "make the rounding smaller, or the region wider or higher",
  });
}
