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
import { clearRing } from "./art.js";
import { chooseCut, cutToCell, type LevelPolygon, type LevelRing, nestRings } from "./cell.js";
import type { GridPath } from "./grid.js";
import { type GridRegion, offset, ringArea, subtract } from "./polygons.js";
import { type Strip, steps } from "./strip.js";

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
  const { height, round, names, path } = options;
  if (round > height) throw roundError(options, height, "the region is only so high");
  const levels = contours(strip, region, options);
  const rings = levels.flat();
  const left = strip.periodic ? chooseCut(rings, strip.grid.tile) : 0;
  const cut = (parts: readonly LevelRing[]) =>
    strip.periodic ? cutToCell(parts, left, strip.grid.tile) : nestRings(parts);
  const top: LevelPolygon[] = [];
  for (let i = 0; i + 1 < levels.length; i++) top.push(...cut([...levels[i], ...levels[i + 1].map(reversed)]));
  top.push(...cut(levels[levels.length - 1]));
  const { scale, tile } = strip.grid;
  const flat = (polygon: LevelPolygon): ReliefPolygon =>
    [polygon.outer, ...polygon.holes].map((ring) => ring.map(({ x, y, h }): Point3 => [x / scale, y / scale, h]));
  if (round > 0) checkRound(strip, region, { height, round, names, path });
  return {
    names,
    top: top.map(flat),
    outline: cut(levels[0]).map(flat),
    seam: strip.periodic ? [left / scale, (left + tile) / scale] : undefined,
    height,
  };
}

/** The outline and the contours above it, each with its height. */
function contours(strip: Strip, region: GridRegion, { height, round }: SectionOptions): LevelRing[][] {
  const count = round === 0 ? 0 : chordCount(round, Math.PI / 2, strip.artTolerance);
  const levels: LevelRing[][] = [];
  for (let i = 0; i <= count; i++) {
    const angle = count === 0 ? Math.PI / 2 : ((Math.PI / 2) * i) / count;
    const inset = round * (1 - Math.cos(angle));
    const h = height - round * (1 - Math.sin(angle));
    const rings = i === 0 ? region : offset(region, -steps(strip, inset), "miter", strip.arcTolerance);
    levels.push(rings.map((ring) => ring.map(({ x, y }) => ({ x, y, h }))));
  }
  return levels;
}

function reversed(ring: LevelRing): LevelRing {
  return [...ring].reverse();
}

/** Shrinking by the rounding must keep every part and every hole of the region. */
function checkRound(strip: Strip, region: GridRegion, options: SectionOptions): void {
  const count = (distance: number) => {
    const rings = distance === 0 ? region : offset(region, -steps(strip, distance), "miter", strip.arcTolerance);
    const clear = rings.filter((ring) => clearRing(strip, ring));
    const outer = clear.filter((ring) => ringArea(ring) > 0).length;
    return `${outer}/${clear.length - outer}`;
  };
  const before = count(0);
  if (count(options.round) === before) return;
  const reach = largestWhere(0, options.round, (distance) => count(distance) === before);
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

/** The middle of what vanishes first when the region is shrunk a little further than `reach` mm, in tile coordinates. */
function narrowestPlace(strip: Strip, region: GridRegion, reach: number): { x: number; y: number } {
  const nudge = NARROW_NUDGE;
  const before = offset(region, -steps(strip, Math.max(reach - nudge, 0)), "miter", strip.arcTolerance);
  const after = offset(region, -steps(strip, reach + nudge), "miter", strip.arcTolerance);
  const lost = subtract(before, offset(after, steps(strip, 3 * nudge), "miter", strip.arcTolerance));
  const clear = lost.filter((ring) => clearRing(strip, ring));
  const largest = clear.reduce<GridPath | undefined>(
    (best, ring) => (best === undefined || ringArea(ring) > ringArea(best) ? ring : best),
    undefined,
  );
  const ring = largest ?? region[0];
  const [x, y] = [mean(ring.map((point) => point.x)), mean(ring.map((point) => point.y))];
  const tile = strip.grid.tile;
  return { x: x / tile - Math.floor(x / tile), y: y / tile };
}

/** mm on either side of the distance at which a part vanishes. */
const NARROW_NUDGE = 1e-3;

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
