/**
 * Tiles that vary: a cycle of tiles that comes again round the band, and the tiles of it on which art stands.
 */
import { z } from "zod";
import { AnnuletError } from "../base/errors.js";

/** Most tiles of a cycle: as many as may go round. */
const MAX_CYCLE = 1000;

export const cycleSchema = z
  .union([z.literal("round"), z.int().min(1).max(MAX_CYCLE)])
  .describe("tiles after which the art comes again, 1 to 1000, or round; all round they divide the tiles; default 1")
  .meta({ id: "cycle" });

const tileIndex = z
  .int()
  .min(0)
  .max(MAX_CYCLE - 1);

export const tilesSchema = z
  .union([
    z.array(tileIndex).min(1).max(MAX_CYCLE),
    z.strictObject({
      every: z.int().min(1).max(MAX_CYCLE).describe("tiles from one to the next, 1 to 1000"),
      from: tileIndex.default(0).describe("the first of them, 0 up; default 0"),
    }),
  ])
  .describe("tiles of the cycle that carry this, from 0; default all")
  .meta({ id: "tiles" });

export type CycleSpec = z.infer<typeof cycleSchema>;
export type TilesSpec = z.infer<typeof tilesSchema>;

/** Tells whether art stands on a tile, by its number along the strip, which may be negative. */
export type StandsOn = (tile: number) => boolean;

/** Tiles in one cycle of so many round. */
export function cycleLength(cycle: CycleSpec, repeats: number): number {
  return cycle === "round" ? repeats : cycle;
}

/**
 * Reads which tiles carry art; undefined where all do.
 *
 * @param cycle tiles in one cycle
 * @param path where the tiles stand in the document
 * @throws AnnuletError `tile-not-in-cycle` where a tile is named that the cycle does not have
 */
export function standsOn(tiles: TilesSpec | undefined, cycle: number, path: string): StandsOn | undefined {
  if (tiles === undefined) return undefined;
  const named = Array.isArray(tiles) ? tiles : everyFrom(tiles, cycle);
  const lost = named.find((tile) => tile >= cycle);
  if (lost !== undefined) {
    throw new AnnuletError({
      code: "tile-not-in-cycle",
      message: `there is no tile ${lost}: the cycle has ${cycle === 1 ? "one tile" : `${cycle} tiles`}, counted from 0`,
      path,
      value: tiles,
      allowed: `0 to ${cycle - 1}`,
      hint: 'set "cycle" in the pattern to the number of tiles after which the art comes again, or to "round"',
    });
  }
  const carrying = new Set(named);
  return (tile) => carrying.has(tile - cycle * Math.floor(tile / cycle));
}

function everyFrom({ every, from }: Exclude<TilesSpec, number[]>, cycle: number): number[] {
  const count = Math.max(1, Math.ceil((cycle - from) / every));
  return Array.from({ length: count }, (_, i) => from + i * every);
}
