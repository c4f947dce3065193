/**
 * All marks of a design.
 */
import type { Warn } from "../errors.js";
import type { FontUse } from "../lettering/load.js";
import type { Typeface } from "../lettering/typeface.js";
import type { Profile } from "../profile/profile.js";
import { showLength } from "../units.js";
import { inscribe } from "./inscribe.js";
import type { Mark } from "./mark.js";
import type { LetteringSpec } from "./schema.js";

export interface MarkDesign {
  readonly lettering: readonly LetteringSpec[];
}

export interface MarksOptions {
  readonly profile: Profile;
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
 * Lays out the marks, in the order in which they are cut or laid on.
 *
 * @throws AnnuletError as `inscribe`
 */
export function makeMarks({ lettering }: MarkDesign, options: MarksOptions): Mark[] {
  const { fonts, warn } = options;
  return lettering.map((spec, i) => {
    const path = `lettering[${i}]`;
    const typeface = fonts.get(spec.font);
    if (typeface === undefined) throw new Error("fonts are loaded before texts are set");
    const mark = inscribe(spec, { ...options, typeface, path });
    if (mark.mode === "raised" && mark.surface.name === "bore") warnBore(mark, warn);
    return mark;
  });
}

function warnBore({ shape, path }: Mark, warn: Warn): void {
  warn({
    code: "bore-narrowed",
    message: `lettering raised in the bore stands ${showLength(shape.height)} into the finger's room: the ring goes on like one whose bore is so much narrower, twice that where raised marks face each other`,
    path,
    value: shape.height,
    hint: "sink it, or take a larger size",
  });
}
