/**
 * All marks of a design.
 */

import type { FontUse } from "../art/text/load-fonts.js";
import type { Typeface } from "../art/text/typeface.js";
import type { Band } from "../band/band.js";
import type { Warn } from "../base/errors.js";
import type { Pausing } from "../base/pausing.js";
import { showLength } from "../base/units.js";
import type { HallmarkSpec, LetteringSpec } from "../design/marks.js";
import { type Field, makeField } from "./hallmark-field.js";
import { inscribe } from "./inscribe.js";
import type { Mark } from "./mark.js";
import type { MarkSurface } from "./mark-surface.js";

export interface MarkDesign {
  readonly lettering: readonly LetteringSpec[];
  readonly hallmark?: HallmarkSpec | undefined;
}

/** What stands at one place of the band. */
export interface Marks {
  /** In the order in which they are cut or laid on. */
  readonly marks: readonly Mark[];
  /** The hallmark's field; undefined where there is none. */
  readonly field: Field | undefined;
}

export interface MarksOptions {
  readonly profile: Band;
  /** θ where the band's facets begin, radians. */
  readonly startAngle: number;
  /** The fonts that the design names. */
  readonly fonts: ReadonlyMap<string, Typeface>;
  /** Largest chordal deviation of the mesh, mm. */
  readonly tolerance: number;
  readonly warn: Warn;
}

/** The fonts that the design's lettering names, each with its place. */
export function fontsOf(lettering: readonly LetteringSpec[]): FontUse[] {
  return lettering.map(({ font }, i) => ({ name: font, where: `lettering[${i}].font` }));
}

/**
 * Lays out the marks.
 *
 * @throws AnnuletError as `inscribe` and `makeField`
 */
export function* makeMarks({ lettering, hallmark }: MarkDesign, options: MarksOptions): Pausing<Marks> {
  const { fonts, warn } = options;
  const field = hallmark && makeField(hallmark, { ...options, path: "hallmark" });
  const texts: Mark[] = [];
  for (const [i, spec] of lettering.entries()) {
    const path = `lettering[${i}]`;
    yield path;
    const typeface = fonts.get(spec.font);
    if (typeface === undefined) throw new Error("fonts are loaded before texts are set");
    const mark = yield* inscribe(spec, { ...options, typeface, path });
    if (mark.body.mode === "raised" && mark.surface.name === "bore") warnBore(mark, warn);
    if (field !== undefined) warnOnField(mark, field, warn);
    texts.push(mark);
  }
  return { marks: field?.mark === undefined ? texts : [field.mark, ...texts], field };
}

/** The field is for marks that others strike: lettering over it leaves them no room. */
function warnOnField(
  { surface, box, body: { path } }: Mark,
  { surface: own, middle, width, height }: Field,
  warn: Warn,
): void {
  const side = (one: MarkSurface) => Math.sign(one.wrap.lineAt(one.wrap.startAngle).point(0, 0)[0]);
  if (surface.name !== own.name || side(surface) !== side(own)) return;
  const { round } = surface.wrap;
  const apart = (box.u[0] + box.u[1]) / 2 - (middle[0] * surface.wrap.referenceRadius) / own.wrap.referenceRadius;
  const along = Math.abs(apart - round * Math.round(apart / round)) - (box.u[1] - box.u[0] + width) / 2;
  const across = Math.abs((box.v[0] + box.v[1]) / 2 - middle[1]) - (box.v[1] - box.v[0] + height) / 2;
  if (along >= 0 || across >= 0) return;
  warn({
    code: "lettering-on-hallmark",
    message: "the lettering stands in the hallmark's field, which should stay plain",
    path,
    hint: "move one of them by angle or v",
  });
}

function warnBore({ body: { height, path } }: Mark, warn: Warn): void {
  warn({
    code: "bore-narrowed",
    message: `lettering raised in the bore stands ${showLength(height)} into the finger's room: the ring goes on like one whose bore is so much narrower, twice that where raised marks face each other`,
    path,
    value: height,
    hint: "sink it, or take a larger size",
  });
}
