/**
 * Symmetry elements by the graphical symbols of the International Tables for Crystallography, vol. A (from memory): a
 * mirror line solid, a glide line dashed, a two-fold centre a filled lens.
 */

import type { SymmetryElements } from "../../base/frieze/symmetry-elements.js";
import type { Point2 } from "../../base/math/point.js";
import { COLOURS, PENS, REGION_SHADE } from "./pens.js";
import { decimal, element, group, pathData } from "./svg.js";

/** Half the lens: length across the band and width along it, mm. */
const LENS = { long: 0.6, wide: 0.28 } as const;

/** Axes stand out beyond the tile by this, mm on paper. */
export const AXIS_OVERHANG = 1.5;

/** Where a span of tiles lies on the drawing. */
export interface TileFrame {
  /** Tiles along and rows across. */
  readonly tiles: number;
  readonly rows: number;
  /** mm */
  readonly tileWidth: number;
  readonly tileHeight: number;
  /** A flat line through (u, v), mm from the left border and the seat's middle, as it lies on the drawing. */
  readonly trace: (line: readonly Point2[]) => readonly Point2[];
  /** mm on paper over mm. */
  readonly scale: number;
}

/** v of each row's middle line, mm, lowest first. */
function rowMiddles({ rows, tileHeight }: Pick<TileFrame, "rows" | "tileHeight">): number[] {
  return Array.from({ length: rows }, (_, row) => (row - (rows - 1) / 2) * tileHeight);
}

/** The fundamental region in the first tile of the lowest row, shaded. */
export function fundamentalRegion({ region }: SymmetryElements, frame: TileFrame): string {
  const [low] = rowMiddles(frame);
  const [left, right] = region.x.map((x) => x * frame.tileWidth);
  const [bottom, top] = region.y.map((y) => low + y * frame.tileHeight);
  const box = frame.trace([
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
    [left, bottom],
  ]);
  return group("fundamental-region", element("path", { d: pathData([box], true), ...REGION_SHADE }));
}

/** All axes and centres on the tiles and their borders. */
export function symmetryMarks({ mirrors, middle, centres }: SymmetryElements, frame: TileFrame): string {
  const { tiles, rows, tileWidth, tileHeight } = frame;
  const overhang = AXIS_OVERHANG / frame.scale;
  const half = (rows * tileHeight) / 2 + overhang;
  const inTiles = (places: readonly number[]) =>
    Array.from({ length: tiles + 1 }, (_, tile) => places.map((x) => tile + x))
      .flat()
      .filter((x) => x <= tiles);
  const axis = (line: readonly Point2[], pen: typeof PENS.mirror | typeof PENS.glide) =>
    element("path", { d: pathData([frame.trace(line)], false), ...pen });
  const across = inTiles(mirrors).map((x) =>
    axis(
      [
        [x * tileWidth, -half],
        [x * tileWidth, half],
      ],
      PENS.mirror,
    ),
  );
  const along = (v: number) =>
    axis(
      [
        [-overhang, v],
        [tiles * tileWidth + overhang, v],
      ],
      middle === "glide" ? PENS.glide : PENS.mirror,
    );
  const lenses = rowMiddles(frame).flatMap((v) =>
    inTiles(centres).map((x) => lens(frame.trace([[x * tileWidth, v]])[0])),
  );
  return group("symmetry", ...across, ...(middle === "none" ? [] : rowMiddles(frame).map(along)), ...lenses);
}

/** The mark of a two-fold centre, with a thin white edge that parts it from what it lies on. */
export function lens([x, y]: Point2): string {
  const { long, wide } = LENS;
  const radius = decimal((long ** 2 + wide ** 2) / (2 * wide));
  const arc = (to: number) => `A${radius} ${radius} 0 0 1 ${decimal(x)} ${decimal(to)}`;
  const d = `M${decimal(x)} ${decimal(y - long)}${arc(y + long)}${arc(y - long)}Z`;
  return element("path", { class: "two-fold", d, fill: COLOURS.accent, stroke: "#ffffff", "stroke-width": 0.08 });
}
