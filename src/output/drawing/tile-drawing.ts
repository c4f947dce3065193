/**
 * The flat tile as a bench drawing in SVG, at true size: one unit is a millimetre.
 *
 * As worn, everything is drawn on the surface at the relief's top, laid flat as it measures: each row is λu(v) times as
 * long as on the flat pattern, about the drawing's middle, so the tiles of a crowned band bulge.
 */

import { AnnuletError } from "../../base/errors.js";
import type { Point2 } from "../../base/math/point.js";
import { A_NUMBER, type OptionRules, requireOptions, YES_OR_NO } from "../../base/options.js";
import { DIMENSION_DEPTH, DIMENSION_WIDTH, levelDimension, uprightDimension } from "./dimension.js";
import type { DrawnTile } from "./drawn-tile.js";
import { legendColumn, legendHeight } from "./legend.js";
import { PENS } from "./pens.js";
import { drawRegions } from "./region-drawing.js";
import { requireTile } from "./require-tile.js";
import { SCALE_BAR, scaleBar } from "./scale-bar.js";
import { showScale } from "./scales.js";
import { element, group, pathData, svgDocument } from "./svg.js";
import { charactersIn, SIZES, textAt, wrapText } from "./svg-text.js";
import { AXIS_OVERHANG, fundamentalRegion, symmetryMarks } from "./symmetry-marks.js";
import { beadBlock, elementsOf, heightBlock, measureBlock, stretchBlock, symmetryBlock } from "./tile-notes.js";
import { type TilePlace, tilePlace } from "./tile-place.js";

/** How a tile is drawn. */
export interface TileDrawingOptions {
  /** Draws the tiles as they measure on the finished surface. Default false. */
  readonly asWorn?: boolean | undefined;
  /** Enlargement: mm on paper over mm, 0.1 to 100. Default 1, true size. */
  readonly scale?: number | undefined;
}

const RULES: OptionRules<TileDrawingOptions> = { asWorn: YES_OR_NO, scale: A_NUMBER };

/** Lengths of the sheet, mm. */
const MARGIN = 8;
const COLUMN_GAP = 8;

/** Degrees of a pattern that goes all the way round. */
const FULL_COVER = 360;

/** The sheet is at least this wide inside its margins, so that two columns of notes read well, mm. */
const LEAST_WIDTH = 136;

/** From the tile's border to the dimension lines: clear of the axes' ends, mm. */
const DIMENSION_OFFSET = 5;
const EXTENSION_START = AXIS_OVERHANG + 0.5;

/** Between the title and an upper dimension, mm. */
const UPPER_GAP = 1;

/** Least and largest enlargement: beyond them nothing is seen, or no paper holds it. Chosen. */
const DRAWING_SCALES = { least: 0.1, most: 100 } as const;

/**
 * Draws a flat tile with its dimensions, at true size or enlarged; the text of an SVG file, lengths in mm.
 *
 * @throws AnnuletError `scale-out-of-range`; as `requireOptions` and `requireTile`
 *
 * @example
 * const svg = drawTile(await flatTile(document, { tiles: 3 }));
 */
export function drawTile(tile: DrawnTile, options: TileDrawingOptions = {}): string {
  requireOptions(options, RULES);
  const { asWorn = false, scale = 1 } = options;
  requireScale(scale);
  requireTile(tile, asWorn);
  const flat = tilePlace(tile, asWorn, [0, 0], scale);
  const width = Math.max(LEAST_WIDTH, flat.width + 2 * (DIMENSION_OFFSET + DIMENSION_WIDTH));
  const title = titleLines(tile, { asWorn, scale }, width);
  const above = DIMENSION_OFFSET + (hasUpperDimension(tile, asWorn) ? DIMENSION_DEPTH + UPPER_GAP : 0);
  const top = MARGIN + title.height + above;
  const place = tilePlace(tile, asWorn, [MARGIN + width / 2, top + flat.height / 2], scale);
  const barTop = top + flat.height + DIMENSION_OFFSET + DIMENSION_DEPTH + 3;
  const notesTop = barTop + SCALE_BAR.clear + 2;
  const columns = [
    [symmetryBlock(tile), heightBlock(tile), measureBlock(tile)],
    [stretchBlock(tile), beadBlock(tile)],
  ];
  const column = (width - COLUMN_GAP) / 2;
  const notes = columns.flatMap((blocks, i) =>
    legendColumn(blocks, [MARGIN + i * (column + COLUMN_GAP), notesTop], column),
  );
  const height = notesTop + Math.max(...columns.map(legendHeight)) + MARGIN;
  return svgDocument(
    width + 2 * MARGIN,
    height,
    tile.name,
    group("title", ...title.lines),
    ...tileLayers(tile, place),
    ...dimensions(tile, place, asWorn),
    scaleBar([MARGIN + width / 2 - SCALE_BAR.length / 2, barTop]),
    group("notes", ...notes),
  );
}

function requireScale(scale: number): void {
  const { least, most } = DRAWING_SCALES;
  if (scale >= least && scale <= most) return;
  throw new AnnuletError({
    code: "scale-out-of-range",
    message: "a drawing cannot be enlarged so",
    value: scale,
    allowed: `${least} to ${most}`,
  });
}

function titleLines(tile: DrawnTile, { asWorn, scale }: Required<TileDrawingOptions>, width: number) {
  const { fit, group: frieze, size, tiles, lane } = tile;
  const bore = `bore ${size.diameter.toFixed(3)} mm, circumference ${size.circumference.toFixed(3)} mm`;
  const label = size.system === undefined ? bore : `${size.system} ${size.label}: ${bore}`;
  const rows = fit.rows === 1 ? "" : ` in ${fit.rows} rows`;
  const { repeats, medallion } = tile.round;
  const cover = fit.cover === FULL_COVER ? "round the band" : `over ${fit.cover}° of the band`;
  const shown = tiles === 1 ? "one shown" : `${tiles} shown`;
  const less = medallion === 0 ? "" : `, ${medallion} of them a medallion's`;
  const what =
    tile.part === "tile"
      ? `${repeats} tiles ${cover}${rows}${less}, ${shown}`
      : `the ${tile.part}, of a band of ${repeats} tiles`;
  const drawn = asWorn
    ? `as worn: laid flat at the relief's top, ${tile.top.height.toFixed(3)} mm above the seat`
    : "flat, as drawn";
  const name = wrapText(tile.name, charactersIn(width, SIZES.title));
  const rest = [
    lane === "" ? what : `${lane}: ${what}`,
    `${frieze.name}: ${frieze.summary}`,
    `${label}; band ${fit.bandWidth.toFixed(3)} mm wide`,
    `${scale === 1 ? "True size" : `Scale ${showScale(scale)}`}, mm; ${drawn}`,
  ].flatMap((line) => wrapText(line, charactersIn(width, SIZES.body)));
  let y = MARGIN;
  const set = (texts: readonly string[], size: number, bold: boolean) =>
    texts.map((text) => {
      y += LINE * size;
      return textAt([MARGIN, y], text, { size, bold });
    });
  const lines = [...set(name, SIZES.title, true), ...set(rest, SIZES.body, false)];
  return { lines, height: y - MARGIN };
}

/** From line to line, in font sizes. */
const LINE = 1.45;

/** Regions, shade, beads, borders and marks, the lowest first; without what tells of the symmetry where it is not wanted. */
export function tileLayers(tile: DrawnTile, place: TilePlace, withSymmetry = true): string[] {
  const elements = elementsOf(tile);
  const beads = tile.beads.map(({ centre, diameter, next }) => {
    const [[cx, cy]] = place.trace([centre]);
    return element("circle", {
      class: next ? "bead next" : "bead",
      cx,
      cy,
      r: (place.scale * diameter) / 2,
      ...PENS.bead,
      fill: "#ffffff",
    });
  });
  return [
    group("regions", ...drawRegions(tile, place.trace)),
    ...(withSymmetry ? [fundamentalRegion(elements, place.frame)] : []),
    group("beads", ...beads),
    group("borders", ...borders(tile, place)),
    ...(withSymmetry ? [symmetryMarks(elements, place.frame)] : []),
  ];
}

/** The seat's edges thick; borders of tiles and rows thin. */
function borders({ fit, tiles, seatLength }: DrawnTile, { trace }: TilePlace): string[] {
  const end = tiles * fit.tileWidth;
  const level = (v: number): Point2[] => [
    [0, v],
    [end, v],
  ];
  const upright = (u: number): Point2[] => [
    [u, -seatLength / 2],
    [u, seatLength / 2],
  ];
  const inner = Array.from({ length: fit.rows - 1 }, (_, row) => level((row + 1) * fit.tileHeight - seatLength / 2));
  const sides = Array.from({ length: tiles + 1 }, (_, tile) => upright(tile * fit.tileWidth));
  return [
    ...[...inner, ...sides].map((line) => element("path", { d: pathData([trace(line)], false), ...PENS.thin })),
    ...[-1, 1].map((side) =>
      element("path", {
        class: "seat-edge",
        d: pathData([trace(level((side * seatLength) / 2))], false),
        ...PENS.thick,
      }),
    ),
  ];
}

function hasUpperDimension({ tiles }: DrawnTile, asWorn: boolean): boolean {
  return tiles > 1 || asWorn;
}

function dimensions(tile: DrawnTile, { trace, box, scale }: TilePlace, asWorn: boolean): string[] {
  const { fit, tiles, seatLength } = tile;
  const half = seatLength / 2;
  const at = (u: number, v: number): Point2 => trace([[u, v]])[0];
  const show = (from: number, to: number) => (Math.abs(to - from) / scale).toFixed(3);
  const [lowLeft, lowRight] = [at(0, -half)[0], at(fit.tileWidth, -half)[0]];
  const below = { at: box.bottom + DIMENSION_OFFSET, start: box.bottom + EXTENSION_START };
  const drawn = [
    levelDimension(lowLeft, lowRight, {
      ...below,
      label: asWorn ? "tile at the lower edge" : "tile width",
      value: show(lowLeft, lowRight),
    }),
  ];
  if (hasUpperDimension(tile, asWorn)) {
    const [left, right] = [at(0, 0)[0], at(tiles * fit.tileWidth, 0)[0]];
    const count = tiles === 1 ? "tile" : `${tiles} tiles`;
    drawn.push(
      levelDimension(left, right, {
        at: box.top - DIMENSION_OFFSET,
        start: box.top - EXTENSION_START,
        label: asWorn ? `${count} on the middle line` : count,
        value: show(left, right),
      }),
    );
  }
  const [bottom, top] = [at(0, -half)[1], at(0, half)[1]];
  const rowTop = at(0, fit.tileHeight - half)[1];
  return [
    ...drawn,
    uprightDimension(bottom, top, {
      at: box.left - DIMENSION_OFFSET,
      start: box.left - EXTENSION_START,
      label: `${tile.lane === "" ? "seat" : "lane"}${asWorn ? ", at top" : ""}`,
      value: show(bottom, top),
    }),
    uprightDimension(bottom, rowTop, {
      at: box.right + DIMENSION_OFFSET,
      start: box.right + EXTENSION_START,
      label: "tile height",
      value: show(bottom, rowTop),
    }),
  ];
}
