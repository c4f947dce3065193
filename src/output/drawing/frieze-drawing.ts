/**
 * A chart of the seven frieze groups in SVG: each with its elements, a fundamental region, and one motif that the group
 * completes.
 */

import { type FriezeGroup, friezeGroups } from "../../base/frieze/symmetry.js";
import { symmetryElements } from "../../base/frieze/symmetry-elements.js";
import type { Point2 } from "../../base/math/point.js";
import { legendColumn, SYMMETRY_LINES } from "./legend.js";
import { PENS, rampFill } from "./pens.js";
import { decimal, element, group, pathData, svgDocument } from "./svg.js";
import { SIZES, textAt } from "./svg-text.js";
import { fundamentalRegion, symmetryMarks } from "./symmetry-marks.js";

/** A fin: no symmetry of its own, inside the smallest of the fundamental regions; tile coordinates, y up. */
const MOTIF =
  "M 0.07 0.09 C 0.07 0.26 0.16 0.41 0.42 0.42 C 0.35 0.36 0.31 0.28 0.33 0.17 C 0.28 0.2 0.25 0.2 0.22 0.17 " +
  "C 0.19 0.14 0.15 0.1 0.07 0.09 Z";

/** The sheet, mm: tiles three in a row, in cells two in a row. */
const TILES = 3;
const TILE = { width: 22, height: 16 } as const;
const CELL = { width: TILES * TILE.width + 12, height: TILE.height + 14 } as const;
const MARGIN = 8;
const COLUMNS = 2;

/** Draws the chart; the text of an SVG file. */
export function drawFriezeGroups(): string {
  const title = "The seven frieze groups";
  const top = MARGIN + 2 * SIZES.title;
  const corner = (i: number): Point2 => [
    MARGIN + (i % COLUMNS) * CELL.width,
    top + Math.floor(i / COLUMNS) * CELL.height,
  ];
  const rows = Math.ceil((friezeGroups.length + 1) / COLUMNS);
  const [x, y] = corner(friezeGroups.length);
  const { region, mirror, glide, centre } = SYMMETRY_LINES;
  const key = { heading: "Symmetry elements of three tiles", lines: [region, mirror, glide, centre] };
  return svgDocument(
    2 * MARGIN + COLUMNS * CELL.width,
    top + rows * CELL.height + MARGIN,
    title,
    textAt([MARGIN, MARGIN + SIZES.title], title, { size: SIZES.title, bold: true }),
    ...friezeGroups.map((one, i) => drawGroup(one, corner(i))),
    group("notes", ...legendColumn([key], [x, y], CELL.width - MARGIN)),
  );
}

function drawGroup(frieze: FriezeGroup, [x, y]: Point2): string {
  const left = x + 2;
  const middle = y + SIZES.body * 2 + 2 + TILE.height / 2;
  const trace = (line: readonly Point2[]) => line.map(([u, v]): Point2 => [left + u, middle - v]);
  const frame = { tiles: TILES, rows: 1, tileWidth: TILE.width, tileHeight: TILE.height, trace, scale: 1 };
  const elements = symmetryElements(frieze);
  return group(
    frieze.name,
    textAt([x, y + SIZES.body], `${frieze.name}: ${frieze.summary}`),
    ...motifs(frieze, [left, middle]),
    fundamentalRegion(elements, frame),
    ...borders(trace),
    symmetryMarks(elements, frame),
  );
}

/** Every image of the motif that lies in the tiles. */
function motifs({ operations }: FriezeGroup, [left, middle]: Point2): string[] {
  return Array.from({ length: TILES }, (_, tile) => tile).flatMap((tile) =>
    operations.map(({ flipX, flipY, shift }) => {
      // The motif lies between 0 and ½: turned over along x it comes to lie left of the tile's border without a shift.
      const at = tile + (flipX && shift === 0 ? 1 : shift);
      const matrix = [
        (flipX ? -1 : 1) * TILE.width,
        0,
        0,
        (flipY ? 1 : -1) * TILE.height,
        left + at * TILE.width,
        middle,
      ];
      const transform = `matrix(${matrix.map(decimal).join(" ")})`;
      return element("path", { class: "motif", d: MOTIF, transform, fill: rampFill("raised", 0, 1) });
    }),
  );
}

function borders(trace: (line: readonly Point2[]) => readonly Point2[]): string[] {
  const half = TILE.height / 2;
  const end = TILES * TILE.width;
  const lines: Point2[][] = [
    [
      [0, -half],
      [end, -half],
    ],
    [
      [0, half],
      [end, half],
    ],
    ...Array.from({ length: TILES + 1 }, (_, tile): Point2[] => [
      [tile * TILE.width, -half],
      [tile * TILE.width, half],
    ]),
  ];
  return lines.map((line) => element("path", { d: pathData([trace(line)], false), ...PENS.thin }));
}
