/**
 * The images of what is drawn in a tile under its frieze group: in every row, in every tile that carries it.
 */
import type { FriezeGroup } from "../../index.js";
import type { FlatPoint } from "./flat-view.js";
import { rowMiddles, type StripLayout } from "./strip-layout.js";

/** x′ = ±x + u, y′ = ±y + v, mm from the own tile's left border and the lane's middle line. */
export interface Image {
  readonly flipX: boolean;
  readonly flipY: boolean;
  readonly u: number;
  readonly v: number;
  /** Whether it is what is drawn itself, in its row: nothing else is an image of it. */
  readonly own: boolean;
}

/** Tells whether art stands on a tile, by its number from the own drawing's first, which may be negative. */
export type Carries = (tile: number) => boolean;

/** Art belongs to the tile in which its middle lies, counted from this share of a tile: as the library has it. */
const TILE_PHASE = 0.0137;

/**
 * All images whose tile lies in the own drawing, or beside it by so many tiles.
 *
 * @param span from x to x of what is drawn, mm
 * @param carries the tiles that carry it; undefined for all
 */
export function imagesOf(
  layout: Pick<StripLayout, "rows" | "tileHeight" | "tileWidth" | "tiles">,
  { operations }: Pick<FriezeGroup, "operations">,
  span: readonly [low: number, high: number],
  carries?: Carries,
  beside = 1,
): Image[] {
  const { tileWidth, tiles } = layout;
  const middles = rowMiddles(layout);
  const tileOf = ([low, high]: readonly [number, number]): number =>
    Math.floor((low + high) / 2 / tileWidth + TILE_PHASE);
  const home = tileOf(span);
  return operations.flatMap(({ flipX, flipY, shift }) => {
    const by = shift * tileWidth;
    const moved: readonly [number, number] = flipX ? [by - span[1], by - span[0]] : [by + span[0], by + span[1]];
    const away = carries === undefined ? 0 : tileOf(moved) - home;
    return Array.from({ length: tiles + 2 * beside }, (_, i) => i - beside).flatMap((tile) => {
      // Where only some tiles carry art, an operation acts within each of these.
      if (carries !== undefined && !carries(tile + away)) return [];
      return middles.map((v, row): Image => {
        const own = !flipX && !flipY && shift === 0 && tile === 0 && row === 0;
        return { flipX, flipY, u: by + tile * tileWidth, v, own };
      });
    });
  });
}

/** Where an image takes a point, mm from the row's middle line → mm from the lane's. */
export function imageOf({ flipX, flipY, u, v }: Image, [x, y]: FlatPoint): FlatPoint {
  return [u + (flipX ? -x : x), v + (flipY ? -y : y)];
}

/** The same as the six numbers of SVG's `matrix`, for art in its own unit, y upwards → mm, y downwards. */
export function imageMatrix({ flipX, flipY, u, v }: Image, [sx, sy]: readonly [number, number]): string {
  return `matrix(${flipX ? -sx : sx} 0 0 ${flipY ? sy : -sy} ${u} ${-v})`;
}
