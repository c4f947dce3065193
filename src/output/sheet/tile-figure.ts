/**
 * One tile, enlarged, with its size and what tells of its symmetry.
 */

import type { Point2 } from "../../base/math/point.js";
import { DIMENSION_DEPTH, DIMENSION_WIDTH, levelDimension, uprightDimension } from "../drawing/dimension.js";
import type { DrawnTile } from "../drawing/drawn-tile.js";
import type { Figure } from "../drawing/figure.js";
import { scaleFor, showScale } from "../drawing/scales.js";
import { AXIS_OVERHANG } from "../drawing/symmetry-marks.js";
import { tileLayers } from "../drawing/tile-drawing.js";
import { tilePlace } from "../drawing/tile-place.js";

/** Room for the tile itself, mm on paper. */
const ROOM: Point2 = [140, 100];

/** From the tile's border to the dimension lines, clear of the axes' ends, mm. */
const OFFSET = 5;
const START = AXIS_OVERHANG + 0.5;

const PARTS = { medallion: "Medallion", ornament: "Ornament at the ends" } as const;

function titleOf({ part, tiles }: DrawnTile): string {
  if (part !== "tile") return PARTS[part];
  return tiles === 1 ? "One tile" : `${tiles} tiles, one cycle`;
}

/** The tile as large as it has room; where tiles vary, one cycle. */
export function drawTileFigure(tile: DrawnTile): Figure {
  const { fit, tiles, seatLength, lane } = tile;
  const [w, h] = [tiles * fit.tileWidth, seatLength];
  const scale = scaleFor([w, h], ROOM);
  const side = OFFSET + DIMENSION_WIDTH;
  const place = tilePlace(tile, false, [side + (w * scale) / 2, START + (h * scale) / 2], scale);
  const { left, right, top, bottom } = place.box;
  const rowTop = bottom - fit.tileHeight * scale;
  const below = { at: bottom + OFFSET, start: bottom + START };
  const across = { at: right + OFFSET, start: right + START, label: "tile height", value: fit.tileHeight.toFixed(3) };
  const seat = { at: left - OFFSET, start: left - START, label: lane === "" ? "seat" : "lane" };
  return {
    name: "tile-figure",
    title: `${titleOf(tile)}${lane === "" ? "" : ` of ${lane}`}, flat`,
    scale: showScale(scale),
    width: 2 * side + w * scale,
    height: bottom + OFFSET + DIMENSION_DEPTH,
    content: [
      ...tileLayers(tile, place),
      levelDimension(left, left + fit.tileWidth * scale, {
        ...below,
        label: "tile width",
        value: fit.tileWidth.toFixed(3),
      }),
      uprightDimension(bottom, rowTop, across),
      ...(fit.rows === 1 ? [] : [uprightDimension(bottom, top, { ...seat, value: seatLength.toFixed(3) })]),
    ],
  };
}
