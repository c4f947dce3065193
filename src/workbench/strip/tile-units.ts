/**
 * Tile coordinates ↔ millimetres: x along the band from the tile's left border, y from its row's middle line towards +z.
 *
 * In the unit `tile` a tile is 1 wide and `aspect` high, so that where it is stretched across the band y stretches with it.
 */
import type { FlatPoint } from "./flat-view.js";
import type { StripLayout } from "./strip-layout.js";

/** What lengths in a drawing are measured in. */
export type DrawingUnit = "tile" | "mm";

/** A point as the document has it. */
export type ArtPoint = readonly [x: number, y: number];

/** mm in the unit of a drawing, along the band and across it. */
export function unitScale(
  { tileWidth, tileHeight, aspect }: Pick<StripLayout, "tileWidth" | "tileHeight" | "aspect">,
  unit: DrawingUnit,
): readonly [along: number, across: number] {
  return unit === "mm" ? [1, 1] : [tileWidth, tileHeight / aspect];
}

/** mm from the own tile's left border and its row's middle line. */
export function toMm([x, y]: ArtPoint, [sx, sy]: readonly [number, number]): FlatPoint {
  return [x * sx, y * sy];
}

export function toArt([u, v]: FlatPoint, [sx, sy]: readonly [number, number]): ArtPoint {
  return [u / sx, v / sy];
}
