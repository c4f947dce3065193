/**
 * A texture laid over the seat: a height field worked out from a seed.
 *
 * Over the tile the texture comes again in every tile, along and across, and the group of the tile is its own: its points are
 * laid out so, no image is laid over another. Over the band it comes again once round, without symmetry, as an image does.
 */
import type { TileOperation } from "../../base/frieze/symmetry.js";
import type { Pausing } from "../../base/pausing.js";
import { MAP_DEFAULTS, type MapSpec } from "../../design/art/image-map.js";
import { type TextureSpec, textureUnits } from "../../design/art/texture.js";
import type { RegionSpec } from "../../design/pattern/region.js";
import type { Strip } from "../../flat/strip.js";
import { completeTile, withFirst, withoutLast } from "../image/complete-tile.js";
import { fallAtEdges } from "../image/fall.js";
import { type Frame, frameOf, type ReadFieldOptions } from "../image/frame.js";
import type { HeightField } from "../image/height-field.js";
import { applyTaps, type Beyond, emptyGrid, type NumberGrid, type Taps, transpose } from "../image/number-grid.js";
import { settle } from "../image/settle.js";
import { textures } from "./index.js";
import { nearbyIn } from "./nearby.js";
import { seedLattice } from "./seed-lattice.js";
import { requireRoom, requireSteps, tooLow } from "./texture-limits.js";

/**
 * The height field of a texture. Its lowest place is the map's base, its highest the base and the region's height, or deepest
 * its depth, before it falls at edges.
 *
 * @throws AnnuletError `resolution-too-fine`; `texture-too-fine`, `texture-too-coarse`, `texture-too-low`
 */
export function* readTexture(spec: RegionSpec, texture: TextureSpec, options: ReadFieldOptions): Pausing<HeightField> {
  const { strip, path } = options;
  const map: MapSpec = spec.map ?? MAP_DEFAULTS;
  const frame = frameOf(spec, map, options);
  requireSteps(texture, frame, path);
  const sunk = spec.mode === "sunk";
  const span = (sunk ? spec.depth : spec.height) ?? 0;
  const tile = spread(softened(yield* drawn(texture, frame, strip, path), frame), { span, map, sunk });
  const heights = frame.tiles === undefined ? tile : withFirst(withoutLast(tile), frame.tiles);
  const { step: _, tiles: _tiles, on: _on, ...place } = frame;
  const field = settle({ ...place, heights: fallAtEdges(heights, spec, map, frame, options.underRail).data });
  if (field.heights.some((height) => height > field.level)) return field;
  throw tooLow(span, field.level, `${path}.${sunk ? "depth" : "height"}`);
}

/** What comes again: the tile with its group, or all that the pattern covers. */
function unitOf({ tiles, right }: Frame, { tileWidth, tileHeight, group, grid, halfSeat }: Strip) {
  if (tiles !== undefined) return { width: tileWidth, height: tileHeight, operations: group.operations };
  const operations: readonly TileOperation[] = [{ flipX: false, flipY: false, shift: 0 }];
  return { width: right, height: (2 * halfSeat) / grid.scale, operations };
}

/**
 * Samples are rounded to this, of a cell's height: sums of a few of them are exact then, whatever their order, so that images
 * stay images to the last bit.
 */
const FINENESS = 2 ** -24;

/** Rows from one pause to the next: of the finest texture they take some 50 ms. */
const PAUSE_ROWS = 8;

/** The texture at the samples of one tile, or of all that the pattern covers; its scale is its own. */
function* drawn(texture: TextureSpec, frame: Frame, strip: Strip, path: string): Pausing<NumberGrid> {
  const { tiles, columns, rows, low, right, repeats, step } = frame;
  const unit = unitOf(frame, strip);
  const wanted = textureUnits(texture);
  requireRoom(texture, wanted, unit, path);
  const { irregular, seed } = texture;
  const near = nearbyIn(seedLattice({ ...unit, ...wanted, irregular, seed }));
  const across = wanted.across > wanted.along;
  const length = Math.max(wanted.along, wanted.across) / Math.min(wanted.along, wanted.across);
  const height = textures[texture.form].height({ across, length });
  const count = columns / (tiles ?? 1);
  // Tiles stand about the middle of their row; with an even number of rows the seat's middle lies between two.
  const middle = tiles !== undefined && strip.rows % 2 === 0 ? unit.height / 2 : 0;
  const grid = emptyGrid(count + 1, rows + 1);
  const along = (tiles === undefined ? right : unit.width) / count;
  for (let y = 0; y <= rows; y++) {
    if (y % PAUSE_ROWS === 0) yield path;
    for (let x = 0; x <= count; x++) {
      const sample = height(near(x * along, low + y * step[1] + middle));
      grid.data[y * grid.width + x] = FINENESS * Math.round(sample / FINENESS);
    }
  }
  const whole = lifted(grid);
  if (tiles === undefined) return repeats ? withFirst(withoutLast(whole), 1) : whole;
  return completeTile(withFirst(withoutLast(whole), 1), unit.operations);
}

/** The same with its lowest place at 0. */
function lifted({ width, height, data }: NumberGrid): NumberGrid {
  let lowest = Number.POSITIVE_INFINITY;
  for (const sample of data) lowest = Math.min(lowest, sample);
  return { width, height, data: data.map((sample) => sample - lowest) };
}

/** Takes the edge off ridges and furrows that are sharper than samples can follow: the binomial 1, 2, 1. */
function softened(grid: NumberGrid, { tiles, repeats }: Frame): NumberGrid {
  const around = tiles !== undefined || repeats;
  const open = around ? withoutLast(grid) : grid;
  const level = binomial(open, around ? "repeats" : "stays");
  const both = transpose(binomial(transpose(level), "stays"));
  return around ? withFirst(both, 1) : both;
}

function binomial(grid: NumberGrid, beyond: Beyond): NumberGrid {
  const taps = Array.from(
    { length: grid.width },
    (_, i): Taps => ({
      first: i - 1,
      weights: [0.25, 0.5, 0.25],
      bounded: false,
    }),
  );
  return applyTaps(grid, taps, beyond);
}

/** Heights in mm, of what is sunk depths, from the base to the base and the span. */
function spread(
  { width, height, data }: NumberGrid,
  { span, map, sunk }: { readonly span: number; readonly map: MapSpec; readonly sunk: boolean },
): NumberGrid {
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const sample of data) {
    if (sample < lowest) lowest = sample;
    if (sample > highest) highest = sample;
  }
  const whole = highest === lowest ? 1 : highest - lowest;
  const turned = map.invert !== sunk;
  const share = (sample: number) => (turned ? highest - sample : sample - lowest) / whole;
  return { width, height, data: data.map((sample) => map.base + span * share(sample)) };
}
