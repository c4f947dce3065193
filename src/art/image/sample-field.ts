/**
 * Pixels as samples on the seat: resampled, completed by the tile's symmetry, smoothed.
 */

import { BREATH, type Pausing } from "../../base/pausing.js";
import type { Strip } from "../../flat/strip.js";
import { completeTile, withFirst, withoutLast } from "./complete-tile.js";
import { type Frame, isMirrored } from "./frame.js";
import { applyTaps, type Beyond, type NumberGrid, transpose } from "./number-grid.js";
import { sampleTaps, smoothTaps } from "./resample.js";

/**
 * The heights at the field's samples.
 *
 * @param pixels heights of the image's pixels, their seams seen to
 * @param smoothing standard deviation, mm
 */
export function* sampleField(pixels: NumberGrid, frame: Frame, strip: Strip, smoothing: number): Pausing<NumberGrid> {
  const sampled = yield* sample(pixels, frame, strip);
  yield BREATH;
  if (frame.tiles === undefined) return yield* smoothen(sampled, smoothing, frame);
  const tile = yield* smoothen(completeTile(sampled, strip.group.operations), smoothing, frame);
  return withFirst(withoutLast(tile), frame.tiles);
}

/** The image's heights at the samples of one tile, or of the whole band where it fills that. */
function* sample(pixels: NumberGrid, frame: Frame, strip: Strip): Pausing<NumberGrid> {
  const { tiles, repeats, low, columns, rows, step } = frame;
  const once = tiles === undefined;
  const count = columns / (tiles ?? 1);
  const images = once ? 1 : strip.rows;
  const seat = (2 * strip.halfSeat) / strip.grid.scale;
  const across = Array.from({ length: count + 1 }, (_, i) => (i / count) * pixels.width);
  // The image's first line is its top, which lies towards +v; beyond the seat's edge its border goes on.
  const down = Array.from({ length: rows + 1 }, (_, j) => {
    const share = 0.5 - (low + j * step[1]) / seat;
    return Math.min(1, Math.max(0, share)) * images * pixels.height;
  });
  const meets = (along: boolean) => (isMirrored(strip, frame, along) ? "mirrors" : "repeats");
  const lines = sampleLines(pixels, across, pixels.width / count, !once || repeats ? meets(false) : "stays");
  yield BREATH;
  const fineness = (images * pixels.height * step[1]) / seat;
  return transpose(sampleLines(transpose(lines), down, fineness, images > 1 ? meets(true) : "stays"));
}

/**
 * Samples of each line. Where mirrors stand at its ends, each image is sampled by itself, up to its end, and a sample on
 * the mirror takes the higher of the two ends.
 */
function sampleLines(
  grid: NumberGrid,
  places: readonly number[],
  step: number,
  beyond: Beyond | "mirrors",
): NumberGrid {
  if (beyond !== "mirrors") return applyTaps(grid, sampleTaps(places, step), beyond);
  const { width } = grid;
  const within = (end: 0 | 1) => places.map((place) => (place % width === 0 ? end * width : place % width));
  const [first, last] = ([0, 1] as const).map((end) => applyTaps(grid, sampleTaps(within(end), step), "stays"));
  return { ...first, data: first.data.map((height, i) => Math.max(height, last.data[i])) };
}

/** Smoothed along both axes. The last column, where the field repeats, stays the first. */
function* smoothen(grid: NumberGrid, deviation: number, { tiles, repeats, step }: Frame): Pausing<NumberGrid> {
  if (deviation === 0) return grid;
  const around = tiles !== undefined || repeats;
  const open = around ? withoutLast(grid) : grid;
  const level = applyTaps(open, smoothTaps(open.width, deviation / step[0]), around ? "repeats" : "stays");
  yield BREATH;
  const both = transpose(applyTaps(transpose(level), smoothTaps(level.height, deviation / step[1]), "stays"));
  return around ? withFirst(both, 1) : both;
}
