/**
 * Sets a text in one line: its letters with their outlines and places.
 */
import { AnnuletError } from "../../base/errors.js";
import { directionOf, isJoined, showCharacter } from "./direction.js";
import { runsFromLeft } from "./number-runs.js";
import type { ShapedGlyph, Typeface } from "./typeface.js";

export interface SetTextOptions {
  /** Height of capitals, mm. */
  readonly height: number;
  /** mm between letters, beside what the font says. Default 0. */
  readonly spacing?: number;
  /** Where the text stands in the document, for errors. */
  readonly where: string;
}

/** One glyph of a set text. */
export interface SetGlyph {
  /** The characters that it is made from, with others of the same cluster. */
  readonly characters: string;
  /** SVG path data, font units, y up. */
  readonly outline: string;
  /** Where its origin stands, mm from the line's start and above its base line. */
  readonly origin: readonly [x: number, y: number];
}

export interface SetText {
  /** From left to right; those without outline are left out. */
  readonly glyphs: readonly SetGlyph[];
  /** mm in a font unit. */
  readonly scale: number;
  /** From the first glyph's origin to the last one's end, mm. */
  readonly advance: number;
}

/** Most characters of path data in a text, so that a font made to stall is refused; letters take some hundreds. Chosen. */
const MAX_OUTLINE = 1_000_000;

/** Most characters that an error lists. */
const LISTED = 20;

/** Characters that need no outline: spaces, joiners and marks that only steer the shaping. */
const UNSEEN = /^[\p{White_Space}\p{Default_Ignorable_Code_Point}]*$/u;

/**
 * Sets a text.
 *
 * @throws AnnuletError `glyph-missing` with the characters that the font lacks, `glyph-without-outline`,
 *   `font-too-complex`, `spacing-tears-joins`, and as `directionOf`
 */
export function setText(typeface: Typeface, text: string, options: SetTextOptions): SetText {
  const { height, spacing = 0, where } = options;
  const runs =
    directionOf(text, where) === "rtl" ? runsFromLeft(text) : [{ text, start: 0, direction: "ltr" as const }];
  if (spacing !== 0 && isJoined(text)) throw tearsJoins(text, spacing, where);
  const shaped = runs.flatMap((run) =>
    typeface
      .shape(run.text, run.direction, { ligatures: spacing === 0 })
      .map((glyph) => ({ ...glyph, cluster: run.start + glyph.cluster })),
  );
  const clusters = clustersOf(text, shaped);
  requireGlyphs(typeface, shaped, clusters, where);
  const scale = height / typeface.capHeight;
  let x = 0;
  let length = 0;
  const glyphs: SetGlyph[] = [];
  const seen = new Set<number>();
  shaped.forEach(({ glyph, cluster, advance, offset }, i) => {
    if (i > 0 && cluster !== shaped[i - 1].cluster) x += spacing;
    const outline = typeface.outline(glyph);
    length += outline.length;
    if (length > MAX_OUTLINE) throw tooComplex(typeface, where);
    if (outline !== "") {
      seen.add(cluster);
      const origin = [x + offset[0] * scale, offset[1] * scale] as const;
      glyphs.push({ characters: clusters.get(cluster) ?? "", outline, origin });
    }
    x += advance * scale;
  });
  const unseen = [...clusters].find(([cluster, characters]) => !seen.has(cluster) && !UNSEEN.test(characters));
  if (unseen !== undefined) throw withoutOutline(typeface, unseen[1], where);
  return { glyphs, scale, advance: x };
}

/** The characters of each cluster: from where it begins to where the next one does. */
function clustersOf(text: string, shaped: readonly ShapedGlyph[]): Map<number, string> {
  const starts = [...new Set(shaped.map(({ cluster }) => cluster))].sort((a, b) => a - b);
  return new Map(starts.map((start, i) => [start, text.slice(start, starts[i + 1])]));
}

function requireGlyphs(
  typeface: Typeface,
  shaped: readonly ShapedGlyph[],
  clusters: ReadonlyMap<number, string>,
  where: string,
): void {
  const lost = shaped.filter(({ glyph }) => glyph === 0).map(({ cluster }) => clusters.get(cluster) ?? "");
  if (lost.length === 0) return;
  const characters = lost.flatMap((cluster) => {
    const lacking = [...cluster].filter((one) => !typeface.has(one.codePointAt(0) ?? 0));
    return lacking.length > 0 ? lacking : [cluster];
  });
  const list = [...new Set(characters)];
  const more = list.length > LISTED ? ` and ${list.length - LISTED} more` : "";
  throw new AnnuletError({
    code: "glyph-missing",
    message: `the font ${typeface.name} has no letter for ${list.slice(0, LISTED).map(showCharacter).join(", ")}${more}`,
    path: where,
    value: list.join(""),
    hint: "name a font that has them",
  });
}

function withoutOutline({ name }: Typeface, characters: string, where: string): AnnuletError {
  return new AnnuletError({
    code: "glyph-without-outline",
    message: `the font ${name} has no outline for ${showCharacter(characters)}: it may draw it as an image or in colours`,
    path: where,
    value: characters,
    hint: "name a font with plain outlines",
  });
}

function tooComplex({ name }: Typeface, where: string): AnnuletError {
  return new AnnuletError({
    code: "font-too-complex",
    message: `the letters of ${name} have too many points`,
    path: where,
    allowed: `outlines of at most ${MAX_OUTLINE} characters in a text`,
    hint: "name a plainer font, or set less text",
  });
}

function tearsJoins(text: string, spacing: number, where: string): AnnuletError {
  return new AnnuletError({
    code: "spacing-tears-joins",
    message: "letters of this script hang together; space between them would tear them apart",
    path: where,
    value: { text, spacing },
    allowed: "a spacing of 0",
    hint: "leave the spacing out",
  });
}
