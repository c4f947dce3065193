/**
 * The pattern unrolled at true size, to be cut out and laid round the mandrel, with a bar to check the print by.
 */

import { DIMENSION_DEPTH, DIMENSION_WIDTH, levelDimension, uprightDimension } from "../drawing/dimension.js";
import type { DrawnTile } from "../drawing/drawn-tile.js";
import type { Figure } from "../drawing/figure.js";
import { SCALE_BAR, scaleBar } from "../drawing/scale-bar.js";
import { SIZES, textAt } from "../drawing/svg-text.js";
import { tileLayers } from "../drawing/tile-drawing.js";
import { tilePlace } from "../drawing/tile-place.js";

/** Class of the figure. */
export const PATTERN_FIGURE = "pattern-figure";

/** mm; long enough that a print at 97 % shows on any ruler. */
const BAR = 20;

/** Room along the band, mm: a short pattern leaves the texts beneath it as much. */
const ROOM = 90;

/** From the pattern to its dimension lines, mm. */
const OFFSET = 4;

/** All tiles of a stretch beside each other. */
export function drawPatternFigure(tile: DrawnTile): Figure {
  const { fit, tiles, seatLength, lane } = tile;
  const length = tiles * fit.tileWidth;
  const side = OFFSET + DIMENSION_WIDTH;
  const room = Math.max(length, ROOM);
  const place = tilePlace(tile, false, [1 + room / 2, 1 + seatLength / 2]);
  const { left, right, top, bottom } = place.box;
  const barTop = bottom + OFFSET + DIMENSION_DEPTH + 3;
  const note = `R = ${fit.referenceRadius.toFixed(3)} mm`;
  return {
    name: PATTERN_FIGURE,
    title: `Pattern${lane === "" ? "" : ` of ${lane}`}, unrolled`,
    scale: "1:1",
    width: 1 + room + side,
    height: barTop + SCALE_BAR.clear,
    content: [
      ...tileLayers(tile, place, false),
      levelDimension(left, right, {
        at: bottom + OFFSET,
        start: bottom + 1,
        label: `${tiles} ${tiles === 1 ? "tile" : "tiles"}, at the reference radius ${note}`,
        value: length.toFixed(3),
      }),
      uprightDimension(bottom, top, {
        at: right + OFFSET,
        start: right + 1,
        label: lane === "" ? "seat" : "lane",
        value: seatLength.toFixed(3),
      }),
      scaleBar([2, barTop], BAR),
      textAt([1 + BAR + 8, barTop + SIZES.small], `Measure the bar: ${BAR} mm, or the print is not true.`, {
        size: SIZES.small,
      }),
    ],
  };
}
