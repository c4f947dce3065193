/**
 * The flat strip on which the pattern is completed: its grid, its symmetry, its rows and the tiles worked at once.
 *
 * A pattern that goes all the way round is worked on the tiles of one period (one tile, or a
 * cycle of tiles that vary) and a few on either side, of which one period is taken; a pattern that stops is worked on all
 * its tiles.
 */

import { type Fit, FULL_COVER } from "../band/fit/fit.js";
import { type FriezeGroup, type FriezeName, friezeGroup } from "../base/frieze/symmetry.js";
import type { Point2 } from "../base/math/point.js";
import type { StandsOn } from "../design/cycle.js";
import { type Grid, type GridPath, type GridPoint, gridFor, operatePath, shiftPath } from "./grid.js";
import { narrowestAtEnds, type SeatOutline, upperEdge } from "./seat-outline.js";

export interface Strip {
  readonly grid: Grid;
  readonly group: FriezeGroup;
  /** Tile width and height, mm. */
  readonly tileWidth: number;
  readonly tileHeight: number;
  /** Aspect of the tile as the art sees it: the path's y runs over ± half of it. */
  readonly aspect: number;
  /** Tiles round the band, or over the span covered. */
  readonly repeats: number;
  /** Tiles after which what is drawn comes again. */
  readonly drawnCycle: number;
  /** Tiles of one period, after which the art comes again once it is cut, and the same in grid steps. */
  readonly cycle: number;
  readonly period: number;
  readonly rows: number;
  /** Whether the pattern goes all the way round. */
  readonly periodic: boolean;
  /** Whether it is one tile alone, without neighbours. */
  readonly single: boolean;
  /** Where a strip that stops is cut off, from x to x, grid steps. */
  readonly stretch: readonly [low: number, high: number];
  /** mm beyond these cuts that beads keep clear of; undefined where they go right up to them. */
  readonly beadStop: number | undefined;
  /** From x to x, grid steps: where every image that belongs there is worked. */
  readonly complete: readonly [low: number, high: number];
  /** From x to x, grid steps: what reaches in here is looked at; it is far from where the strip's ends show. */
  readonly clear: readonly [low: number, high: number];
  /** Middle line of each row and the step between rows, grid steps. */
  readonly rowMiddles: readonly number[];
  readonly rowStep: number;
  /** Half the seat's length, grid steps. */
  readonly halfSeat: number;
  /** Upper edge of the seat where art is cut off at it, as `upperEdge`; undefined where the strip is a seat's or a lane's whole. */
  readonly edge: GridPath | undefined;
  /** Largest deviation of flattened art, mm, and the same in grid steps. */
  readonly artTolerance: number;
  readonly arcTolerance: number;
  /** Largest deviation of bodies' outlines and edges from the art, mm; no less than the art's own. */
  readonly bodyTolerance: number;
}

/** Complete tiles on either side of one period, or of the stretch covered: a cell, its neighbours, and room for their cuts. */
const COMPLETE_TILES = 2;

/** Tiles beyond one period on each side that hold at least one whole copy of everything, far from the strip's ends. */
const CLEAR_TILES = 0.6;

/** Share of the mesh tolerance that flattening the art may use; bending takes the rest. */
const ART_SHARE = 0.5;

/** What a strip needs to know of a fit. */
export type StripFit = Pick<Fit, "tileWidth" | "tileHeight" | "repeats" | "rows" | "cover" | "cycle" | "aspect">;

export interface StripOptions {
  /** One tile alone, without neighbours. Default no. */
  readonly single?: boolean;
  /** mm from either end of a strip that stops to where its art is cut off. Default 0. */
  readonly inset?: number;
  /** mm from there that beads keep clear of. Default: they go right up to it. */
  readonly beadStop?: number;
  /** The tolerance of bodies, mm, where it is larger than that of art and bead lines. Default: that. */
  readonly bodyTolerance?: number | undefined;
  /** The seat, where art is cut off at its edge: the whole round is then one period. Default: none. */
  readonly outline?: SeatOutline | undefined;
}

/** Rounds beyond the complete span on either side to which the seat's edge is known. */
const EDGE_ROUNDS = 0.5;

/** The strip for a fit. `seatLength` and `tolerance` in mm. */
export function makeStrip(
  fit: StripFit,
  symmetry: FriezeName,
  seatLength: number,
  tolerance: number,
  { single = false, inset = 0, beadStop, bodyTolerance = tolerance, outline }: StripOptions = {},
): Strip {
  const { tileWidth, tileHeight, repeats, rows, cover } = fit;
  const grid = gridFor(tileWidth);
  const halfRow = Math.round((tileHeight * grid.scale) / 2);
  const periodic = cover === FULL_COVER;
  const cycle = outline !== undefined && periodic ? repeats : fit.cycle;
  const end = periodic ? cycle : repeats;
  // What is cut off on both sides of a strip's beginning may be as long as the round.
  const spare = COMPLETE_TILES + (outline !== undefined && periodic && !narrowestAtEnds(outline) ? repeats : 0);
  const complete = [-spare * grid.tile, (end + spare) * grid.tile] as const;
  const round = periodic ? cycle * grid.tile : (outline?.round ?? 0) * grid.scale;
  const known = [complete[0] - EDGE_ROUNDS * round, complete[1] + EDGE_ROUNDS * round] as const;
  const artTolerance = tolerance * ART_SHARE;
  return {
    grid,
    group: friezeGroup(symmetry),
    tileWidth,
    tileHeight,
    aspect: fit.aspect,
    repeats,
    drawnCycle: fit.cycle,
    cycle,
    period: cycle * grid.tile,
    rows,
    periodic,
    single,
    stretch: [Math.round(inset * grid.scale), end * grid.tile - Math.round(inset * grid.scale)],
    beadStop,
    complete,
    clear: periodic ? [-CLEAR_TILES * grid.tile, (end + CLEAR_TILES) * grid.tile] : [0, end * grid.tile],
    rowMiddles: Array.from({ length: rows }, (_, row) => (2 * row - rows + 1) * halfRow),
    rowStep: 2 * halfRow,
    halfSeat: Math.round((seatLength / 2) * grid.scale),
    edge: outline && upperEdge(outline, { scale: grid.scale, round, span: known }),
    artTolerance,
    arcTolerance: artTolerance * grid.scale,
    bodyTolerance: Math.max(artTolerance, bodyTolerance * ART_SHARE),
  };
}

/** The same strip for work on bodies: as coarse as they may be. */
export function bodyStrip(strip: Strip): Strip {
  const { grid, bodyTolerance } = strip;
  return { ...strip, artTolerance: bodyTolerance, arcTolerance: bodyTolerance * grid.scale };
}

export interface ImagesOptions {
  /** How far, grid steps, what becomes of a path may reach beyond it. Default 0. */
  readonly reach?: number;
  /** The tiles that carry the paths. Default all. */
  readonly on?: StandsOn;
}

/**
 * All images of drawn paths that reach the strip's complete span: every operation of the group, every row, every tile.
 *
 * Where only some tiles carry them, an operation acts within each of these: the image's middle stands in the same tile as
 * the middle of what is drawn.
 */
export function imagesOf(
  strip: Strip,
  paths: readonly GridPath[],
  { reach = 0, on: asked }: ImagesOptions = {},
): { readonly path: GridPath; readonly flipped: boolean }[] {
  const { grid, group, rowMiddles } = strip;
  const on = strip.single ? (tile: number) => tile === 0 : asked;
  const images: { path: GridPath; flipped: boolean }[] = [];
  const home = on === undefined ? 0 : ownTile(strip, paths.flat());
  for (const operation of group.operations) {
    const flipped = operation.flipX !== operation.flipY;
    const operated = paths.map((path) => operatePath(grid, path, operation));
    const away = on === undefined ? 0 : ownTile(strip, operated.flat()) - home;
    for (const image of operated) {
      const [first, last] = copiesReached(strip, image, reach, grid.tile);
      for (const middle of rowMiddles) {
        for (let tile = first; tile <= last; tile++) {
          if (on?.(tile + away) ?? true) images.push({ path: shiftPath(image, tile * grid.tile, middle), flipped });
        }
      }
    }
  }
  return images;
}

/** About how many images each path of a tile has, where all tiles carry it. */
export function mostImages({ complete: [low, high], grid, group, rows }: Strip): number {
  return group.operations.length * rows * Math.max(1, (high - low) / grid.tile);
}

/** First and last copy of the path, `step` apart, that comes within `reach` of the complete stretch. */
function copiesReached({ complete }: Strip, path: GridPath, reach: number, step: number): [number, number] {
  const [low, high] = spanOf(path);
  return [Math.ceil((complete[0] - reach - high) / step), Math.floor((complete[1] + reach - low) / step)];
}

/** Paths belong to the tile in which their middle lies, counted from this share of a tile, where no symmetric middle falls. */
const TILE_PHASE = 0.0137;

/** The tile that a path belongs to. */
function ownTile({ grid: { tile } }: Strip, path: GridPath): number {
  const [low, high] = spanOf(path);
  return Math.floor((low + high) / 2 / tile + TILE_PHASE);
}

/** Whether a path belongs to a tile of the first period, the tiles from 0 up. */
export function inFirstPeriod(strip: Strip, path: GridPath): boolean {
  const tile = ownTile(strip, path);
  return tile >= 0 && tile < strip.cycle;
}

/** Paths up to this many tiles long are whole in one period of a periodic strip, and alike in every other. */
const LOCAL_TILES = 1.5;

/**
 * What is made of paths one by one, made in one period alone and copied along a periodic strip. Paths too long for that, and
 * those of a strip that stops, are worked as they are.
 */
export function makeOnce(
  strip: Strip,
  paths: readonly GridPath[],
  make: (paths: readonly GridPath[]) => readonly GridPath[],
): GridPath[] {
  const own = make(paths.filter((path) => isLocal(strip, path) && inFirstPeriod(strip, path)));
  const copies = own.flatMap((path) => copiesAlong(strip, path));
  return [...copies, ...make(paths.filter((path) => !isLocal(strip, path)))];
}

/** Whether a path of a periodic strip is short enough to be whole in one period. */
export function isLocal({ periodic, grid }: Strip, path: GridPath): boolean {
  const [low, high] = spanOf(path);
  return periodic && high - low <= LOCAL_TILES * grid.tile;
}

/** A path of one period of a periodic strip in all of them; of a strip that stops, itself. */
export function copiesAlong(strip: Strip, path: GridPath): GridPath[] {
  if (!strip.periodic) return [path];
  const [first, last] = copiesReached(strip, path, 0, strip.period);
  return Array.from({ length: last - first + 1 }, (_, i) => shiftPath(path, (first + i) * strip.period, 0));
}

/** Smallest and largest x of a path, grid steps. */
function spanOf(path: GridPath): [low: number, high: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { x } of path) {
    if (x < low) low = x;
    if (x > high) high = x;
  }
  return [low, high];
}

/** How often a period of the strip comes round the band: once where the strip stops. */
export function repeatsOf({ periodic, repeats, cycle }: Strip): number {
  return periodic ? repeats / cycle : 1;
}

/** A point in grid steps as (u, v), mm. */
export function flatPoint(strip: Strip, point: GridPoint): Point2 {
  return [point.x / strip.grid.scale, point.y / strip.grid.scale];
}

/** Millimetres as grid steps. */
export function steps(strip: Strip, mm: number): number {
  return mm * strip.grid.scale;
}

/** Whether a ring or line reaches into the strip's clear span. */
export function clearRing({ clear: [first, last] }: Strip, path: GridPath): boolean {
  const [low, high] = spanOf(path);
  return high > first && low < last;
}
