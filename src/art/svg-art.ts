/**
 * A region whose art is an SVG file: the drawing put in its tile, as united rings on the grid.
 */
import { AnnuletError, type Warn } from "../base/errors.js";
import { finish, type Pausing } from "../base/pausing.js";
import { PLACE_DEFAULTS, type PlaceSpec } from "../design/art/art-place.js";
import type { TextArt } from "../design/art/text-art.js";
import type { DrawingUnit } from "../design/path-schema.js";
import { fromGrid } from "../flat/grid.js";
import type { Strip } from "../flat/strip.js";
import { checkReach, type DrawnPaths } from "./read-art.js";
import { measuringArt, nothingShows } from "./svg/art-box.js";
import type { Drawing } from "./svg/drawing.js";
import { type Cleaned, outliningDrawing } from "./svg/outline-drawing.js";
import { placeDrawing } from "./svg/place-drawing.js";
import { textName } from "./text/text-art.js";

/** A file and where it stands. */
export interface SvgArt {
  readonly svg: string;
  readonly place?: Partial<PlaceSpec> | undefined;
  readonly unit: DrawingUnit;
}

/** How a drawing is read. */
export interface SvgArtOptions {
  /** Largest chordal deviation, mm. */
  readonly tolerance: number;
  /** The file's place in the document, for errors. */
  readonly where: string;
  readonly warn: Warn;
}

/**
 * Places a drawing in the tile. Warns `svg-cleaned` with what cleaning changed.
 *
 * @throws AnnuletError `svg-empty`, `path-outside-tile`, and as `outlineDrawing`
 */
export function readSvgArt(strip: Strip, spec: SvgArt, drawing: Drawing, options: SvgArtOptions): DrawnPaths {
  return finish(readingSvgArt(strip, spec, drawing, options));
}

/** The same in pieces. */
export function* readingSvgArt(
  strip: Strip,
  spec: SvgArt,
  drawing: Drawing,
  options: SvgArtOptions,
): Pausing<DrawnPaths> {
  const { tolerance, where, warn } = options;
  const { unit, place } = spec;
  const byArt = drawing.page === undefined || (place?.by ?? PLACE_DEFAULTS.by) === "art";
  const box = byArt || drawing.page === undefined ? yield* measuringArt(drawing, where) : drawing.page;
  const { tileWidth: width, tileHeight: height, aspect, grid } = strip;
  const map = placeDrawing(place, box, { unit, width, height, aspect });
  const how = { place: map, scale: grid.scale, tolerance, where };
  const { region, cleaned } = yield* outliningDrawing(drawing, how);
  if (region.length === 0) throw nothingShows(drawing.name, where);
  const rings = region.map((ring) => ({ points: fromGrid(grid, ring) }));
  checkReach(strip, rings, { unit, value: spec.svg, what: "the drawing" }, where);
  if (cleaned.duplicates + cleaned.tinyLoops + cleaned.crossings > 0)
    warn(cleanedWarning(drawing.name, cleaned, where));
  return { closed: region.map((ring) => [...ring]), open: [] };
}

/** A text and where it stands. */
export interface PlacedText extends Omit<SvgArt, "svg"> {
  readonly text: TextArt;
}

/**
 * Places a text in the tile, as a drawing is placed, in pieces. Outlines that cross themselves are usual in fonts and not told.
 *
 * @throws AnnuletError as `readSvgArt`
 */
export function* readingTextArt(
  strip: Strip,
  { text, place, unit }: PlacedText,
  drawings: ReadonlyMap<string, Drawing>,
  where: string,
): Pausing<DrawnPaths> {
  const drawing = drawingOf(textName(text), drawings, where);
  const fit = text.height === undefined ? {} : ({ fit: "drawn" } as const);
  const art = { svg: text.text, place: { ...place, ...fit }, unit };
  return yield* readingSvgArt(strip, art, drawing, { tolerance: strip.artTolerance, where, warn: () => undefined });
}

/** The drawing of that name. */
export function drawingOf(name: string, drawings: ReadonlyMap<string, Drawing>, where: string): Drawing {
  const drawing = drawings.get(name);
  if (drawing !== undefined) return drawing;
  throw new AnnuletError({
    code: "svg-file-missing",
    message: `the file ${name} was not loaded`,
    path: where,
    value: name,
  });
}

function cleanedWarning(name: string, { duplicates, tinyLoops, crossings }: Cleaned, where: string) {
  const count = (n: number, one: string, many: string) => (n === 0 ? [] : [`${n} ${n === 1 ? one : many}`]);
  const changes = [
    ...count(duplicates, "repeated point dropped", "repeated points dropped"),
    ...count(tinyLoops, "loop below 0.0001 mm² dropped", "loops below 0.0001 mm² dropped"),
    ...count(
      crossings,
      "outline that crosses itself united by its fill rule",
      "outlines that cross themselves united by their fill rules",
    ),
  ];
  return { code: "svg-cleaned", message: `${name} was cleaned: ${changes.join(", ")}`, path: where };
}
