/**
 * How a pattern that stops ends: what it asks of the strip, the line across the seat, and the span that fades.
 */
import { AnnuletError } from "../base/errors.js";
import { showLength } from "../base/units.js";
import { lanesOf } from "../design/lanes.js";
import type { EndsSpec } from "../design/pattern/area.js";
import type { PatternSpec } from "../design/pattern/pattern.js";
import { boxRing } from "../flat/box.js";
import type { Strip, StripOptions } from "../flat/strip.js";
import type { DrawnRegion } from "../relief/drawn-region.js";
import type { Fade } from "../relief/flat-body.js";

/** What the ends ask of the strip: art is cut off in the middle of a line, beads keep clear of it and of a fade. */
export function endOptions(ends: EndsSpec | undefined): StripOptions {
  if (ends?.form === "line") return { inset: ends.width / 2, beadStop: ends.width / 2 };
  return ends?.form === "fade" ? { beadStop: ends.length } : {};
}

/**
 * mm from the pattern's ends to what keeps clear that stops with it: a line, a fade, the wall of what is filled; undefined
 * where nothing stands there.
 */
export function coverStop(spec: PatternSpec): number | undefined {
  const stops = lanesOf(spec).flatMap(({ ends }) => {
    if (ends?.form === "line") return [ends.width];
    return ends?.form === "fade" ? [ends.length] : [];
  });
  if (spec.plain === "filled") stops.push(0);
  return stops.length === 0 ? undefined : Math.max(...stops);
}

/** The lines across the seat at both ends, as a raised region; none for other forms. */
export function endLines(strip: Strip, ends: EndsSpec | undefined, where: string): DrawnRegion[] {
  if (ends?.form !== "line") return [];
  const { height, round } = ends;
  const end = strip.repeats * strip.grid.tile;
  const width = Math.round(ends.width * strip.grid.scale);
  requireRoom(2 * ends.width, strip, `${where}.width`);
  const across = { low: -strip.halfSeat, high: strip.halfSeat };
  const region = [boxRing({ ...across, left: 0, right: width }), boxRing({ ...across, left: end - width, right: end })];
  const name = "end line";
  const spec = { name, path: "", unit: "mm", fill: "nonzero", mode: "raised", height, round, broken: 0 } as const;
  return [{ spec, path: where, name, art: { region, border: region, centre: [] }, atEnds: true }];
}

/**
 * Where the relief fades; undefined for other forms.
 *
 * @throws AnnuletError `ends-too-long` where the two fades meet
 */
export function fadeOf(strip: Strip, ends: EndsSpec | undefined, where: string): Fade | undefined {
  if (ends?.form !== "fade") return undefined;
  const { length } = ends;
  requireRoom(2 * length, strip, `${where}.length`);
  return { ends: [0, strip.repeats * strip.tileWidth], length, tolerance: strip.bodyTolerance };
}

function requireRoom(length: number, strip: Strip, path: string): void {
  const room = strip.repeats * strip.tileWidth;
  if (length < room) return;
  throw new AnnuletError({
    code: "ends-too-long",
    message: "the two ends of the pattern meet",
    path,
    value: length / 2,
    allowed: `under ${showLength(room / 2)}, half of what lies between the ends`,
    hint: "make the ends shorter, or cover more of the band",
  });
}
