/**
 * The catalogue of motifs as a sheet in SVG: each in three tiles, with its name, what it is for and what one sees.
 */

import type { Point2 } from "../../base/math/point.js";
import type { MotifEntry } from "../../design/motifs/list.js";
import type { DrawnTile } from "./drawn-tile.js";
import { PENS } from "./pens.js";
import { drawRegions } from "./region-drawing.js";
import { element, group, pathData, svgDocument } from "./svg.js";
import { charactersIn, SIZES, textAt, wrapText } from "./svg-text.js";

/** A motif with the flat tiles of a design that shows it. */
export interface MotifSample {
  readonly motif: MotifEntry;
  readonly tile: DrawnTile;
}

/** The sheet, mm. */
const MARGIN = 8;
const COLUMNS = 4;
const GAP = 6;

/** Millimetres on the sheet for one of the tile. */
const ZOOM = 2;

/** From line to line of text, in font sizes. */
const LINE = 1.4;

/** Draws the sheet; the text of an SVG file. Every sample shows the same number of tiles of the same width. */
export function drawMotifs(samples: readonly MotifSample[]): string {
  const title = "Motifs";
  const width = Math.max(...samples.map(({ tile }) => ZOOM * tile.tiles * tile.fit.tileWidth));
  const rows = Array.from({ length: Math.ceil(samples.length / COLUMNS) }, (_, i) =>
    samples.slice(i * COLUMNS, (i + 1) * COLUMNS),
  );
  let y = MARGIN + 2 * SIZES.title;
  const cells = rows.flatMap((row) => {
    const high = Math.max(...row.map(({ tile }) => ZOOM * tile.seatLength));
    const notes = row.map(({ motif }) => notesOf(motif, width));
    const drawn = row.map(({ motif, tile }, i) => {
      const x = MARGIN + i * (width + GAP);
      return group(
        motif.name,
        textAt([x, y + SIZES.body], motif.name, { bold: true }),
        ...notes[i].map((line, k) =>
          textAt([x, y + SIZES.body + (k + 1) * LINE * SIZES.small], line, { size: SIZES.small }),
        ),
        ...drawSample(tile, [x, y + headHeight(notes) + high / 2]),
      );
    });
    y += headHeight(notes) + high + GAP;
    return drawn;
  });
  return svgDocument(
    2 * MARGIN + COLUMNS * (width + GAP) - GAP,
    y + MARGIN - GAP,
    title,
    textAt([MARGIN, MARGIN + SIZES.title], title, { size: SIZES.title, bold: true }),
    ...cells,
  );
}

function notesOf({ summary, group, aspect, ribbon }: MotifEntry, width: number): string[] {
  const use = ribbon === undefined ? "filled" : `ribbon of ${ribbon.share} tiles`;
  return [`${group}, aspect ${aspect.natural}, ${use}`, ...wrapText(summary, charactersIn(width, SIZES.small))];
}

/** Height of a row's names and notes, mm. */
function headHeight(notes: readonly (readonly string[])[]): number {
  return SIZES.body + Math.max(...notes.map(({ length }) => length)) * LINE * SIZES.small + 2;
}

/** The tiles with their left border's middle at a point. */
function drawSample(tile: DrawnTile, [x, y]: Point2): string[] {
  const trace = (line: readonly Point2[]) => line.map(([u, v]): Point2 => [x + ZOOM * u, y - ZOOM * v]);
  const half = tile.seatLength / 2;
  const borders = Array.from({ length: tile.tiles + 1 }, (_, i): Point2[] => [
    [i * tile.fit.tileWidth, -half],
    [i * tile.fit.tileWidth, half],
  ]);
  const edges = [-half, half].map((v): Point2[] => [
    [0, v],
    [tile.tiles * tile.fit.tileWidth, v],
  ]);
  return [
    ...drawRegions(tile, trace),
    ...[...borders, ...edges].map((line) => element("path", { d: pathData([trace(line)], false), ...PENS.thin })),
  ];
}
