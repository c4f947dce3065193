/**
 * Lettering on a surface of the band: the text's outlines laid by arc length about its place.
 */

import type { Drawing } from "../art/svg/drawing.js";
import { outliningDrawing } from "../art/svg/outline-drawing.js";
import { setText } from "../art/text/set-text.js";
import { PX_PER_MM, textDrawing } from "../art/text/text-drawing.js";
import type { Typeface } from "../art/text/typeface.js";
import type { Band } from "../band/band.js";
import { AnnuletError, type Warn } from "../base/errors.js";
import { scaling } from "../base/math/affine.js";
import type { Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import { type LetteringSpec, MARK_DEFAULTS } from "../design/marks.js";
import { shiftPath } from "../flat/grid.js";
import type { GridRegion } from "../flat/polygons.js";
import { type Strip, steps } from "../flat/strip.js";
import { tidying } from "../flat/tidy.js";
import { boxOf, type Mark, makeMark, surfaceStrip } from "./mark.js";
import { surfaceAt } from "./mark-surface.js";
import { narrowestStroke, warnThinStrokes } from "./thin-strokes.js";

export interface InscribeOptions {
  readonly profile: Band;
  /** θ where the band's facets begin, radians. */
  readonly startAngle: number;
  readonly typeface: Typeface;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly path: string;
  readonly warn: Warn;
}

/** Longest text that is shown in messages, characters. */
const SHOWN_TEXT = 40;

/**
 * Sets a text and lays it on its surface.
 *
 * @throws AnnuletError `round-too-large` with the narrowest stroke, and as `setText`, `surfaceAt` and `makeMark`
 */
export function* inscribe(spec: LetteringSpec, options: InscribeOptions): Pausing<Mark> {
  const { profile, startAngle, typeface, tolerance, path, warn } = options;
  const { text, height, spacing, mode, round, draft, angle } = spec;
  const surface = surfaceAt({ ...spec, path }, profile, startAngle);
  const strip = surfaceStrip(surface, tolerance);
  const where = `${path}.text`;
  const drawing = textDrawing(setText(typeface, text, { height, spacing, where }), { name: text, height, where });
  yield path;
  // Half a turn in the plane, not a mirror: the text goes on reading from left to right.
  const sense = surface.turned === (spec.up === "+z") ? -1 : 1;
  const v = surface.turned ? -spec.v : spec.v;
  const laid = yield* layingText(strip, drawing, { sense, v, height, where });
  yield path;
  const region = yield* tidying(strip, laid, path, warn);
  yield path;
  const letterAt = (x: number) => letterNear(strip, drawing, region, sense, x);
  if (round > 0) yield* requireRound(strip, region, spec, { path, letterAt });
  yield path;
  yield* warnThinStrokes(strip, region, { mode, path, letterAt, warn });
  yield path;
  const { depth, relief } = MARK_DEFAULTS.lettering;
  return yield* makeMark(region, {
    surface,
    strip,
    angle,
    mode,
    round,
    draft,
    path,
    height: mode === "sunk" ? (spec.depth ?? depth) : (spec.relief ?? relief),
    what: `the text ${JSON.stringify(text.length > SHOWN_TEXT ? `${text.slice(0, SHOWN_TEXT)}…` : text)}`,
  });
}

interface Laying {
  /** 1 where the letters' tops point to +v, −1 where to −v. */
  readonly sense: 1 | -1;
  /** Of the middle of the capitals' height, mm. */
  readonly v: number;
  readonly height: number;
  readonly where: string;
}

/** The text's region, what is seen of it centred in the strip: letter by letter. */
function* layingText(strip: Strip, drawing: Drawing, { sense, v, height, where }: Laying): Pausing<GridRegion> {
  const { scale } = strip.grid;
  const place = scaling(sense / PX_PER_MM, -sense / PX_PER_MM);
  const { region } = yield* outliningDrawing(drawing, { place, scale, tolerance: strip.artTolerance, where });
  const [low, high] = boxOf(region, strip).u;
  const dx = Math.round(steps(strip, (strip.tileWidth - low - high) / 2));
  const dy = Math.round(steps(strip, v - (sense * height) / 2));
  return region.map((ring) => shiftPath(ring, dx, dy));
}

/** The letter whose origin is the last before x, in the direction of reading. */
function letterNear(strip: Strip, { shapes }: Drawing, region: GridRegion, sense: 1 | -1, x: number): string {
  const [low, high] = boxOf(region, strip).u;
  const first = Math.min(...shapes.map(({ map }) => map[4])) / PX_PER_MM;
  const along = sense > 0 ? x - low : high - x;
  const before = shapes.filter(({ map }) => map[4] / PX_PER_MM - first <= along);
  return (before.at(-1) ?? shapes[0]).what;
}

function* requireRound(
  strip: Strip,
  region: GridRegion,
  { round }: LetteringSpec,
  { path, letterAt }: { readonly path: string; readonly letterAt: (x: number) => string },
): Pausing<void> {
  const narrow = yield* narrowestStroke(strip, region, 2 * round);
  if (narrow === undefined) return;
  throw new AnnuletError({
    code: "round-too-large",
    message: `an edge rounded by ${showLength(round)} does not fit: a stroke of ${letterAt(narrow.x)} is only ${showLength(narrow.width)} wide`,
    path: `${path}.round`,
    value: round,
    allowed: `0 to ${showLength(Math.floor((narrow.width / 2) * 1000) / 1000)}`,
    hint: "round less, make the letters higher, or name a bolder font",
  });
}
