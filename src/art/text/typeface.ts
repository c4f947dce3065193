/**
 * A font in use. The one file that knows what the shaping engine does.
 *
 * What the engine holds outside of JavaScript's memory it frees when the objects here are collected; it has no other way
 * to free it. A font's bytes are held once, for as long as the typeface is.
 */
import type * as Engine from "harfbuzzjs";
import type { Direction } from "./direction.js";
import { loadEngine } from "./engine.js";
import { brokenFont, checkSfnt, type FontFile, requireFontSize } from "./sfnt.js";
import { isWoff, unpackWoff } from "./woff.js";

/** A glyph of a shaped text, in font units; y is up. */
export interface ShapedGlyph {
  /** Number in the font; 0 where the font has none for the character. */
  readonly glyph: number;
  /** Where in the text its characters begin, UTF-16 units. */
  readonly cluster: number;
  readonly advance: number;
  readonly offset: readonly [x: number, y: number];
}

export interface Typeface {
  readonly name: string;
  readonly unitsPerEm: number;
  /** Height of the letter H, font units; what the font says of its capitals where it has none. */
  readonly capHeight: number;
  /** Whether the font has a glyph for a character. */
  readonly has: (codePoint: number) => boolean;
  /** The glyphs of a text from left to right, kerned, joined and composed as the font says. */
  readonly shape: (text: string, direction: Direction, options: ShapeOptions) => readonly ShapedGlyph[];
  /** A glyph's outline as SVG path data, font units, y up; empty where it has none. */
  readonly outline: (glyph: number) => string;
}

export interface ShapeOptions {
  /** Whether letters may be joined for looks, as in fi; joins that a script needs are always made. */
  readonly ligatures: boolean;
}

/** Heights of capitals, in ems, that are believed; other values in a font are taken as missing. Chosen. */
const CAP_RANGE = [0.2, 1.5] as const;

/** Height of capitals of a font that neither has an H nor says it, in ems: usual, from memory. */
const USUAL_CAP = 0.7;

/**
 * Opens a font file.
 *
 * @throws AnnuletError `font-too-large`, `font-kind-unknown`, `font-broken`, `text-engine-unavailable`
 */
export async function openTypeface(file: FontFile): Promise<Typeface> {
  requireFontSize(file);
  const bytes = isWoff(file.bytes) ? await unpackWoff(file) : file.bytes;
  checkSfnt({ ...file, bytes });
  const engine = await loadEngine();
  const face = new engine.Face(new engine.Blob(bytes));
  const font = new engine.Font(face);
  if (face.collectUnicodes().length === 0) throw brokenFont(file, "it names no characters");
  const shape = (text: string, direction: Direction, { ligatures }: ShapeOptions): ShapedGlyph[] => {
    const buffer = new engine.Buffer();
    buffer.addText(text);
    buffer.setDirection(direction === "rtl" ? engine.Direction.RTL : engine.Direction.LTR);
    // Without a language of its own the buffer would take the system's.
    buffer.setLanguage("und");
    buffer.guessSegmentProperties();
    const off = ligatures ? [] : ["liga", "clig"].map((tag) => new engine.Feature(tag, 0));
    engine.shape(font, buffer, off);
    const positions = buffer.getGlyphPositions();
    return buffer.getGlyphInfos().map(({ codepoint, cluster }, i) => {
      const { xAdvance, xOffset, yOffset } = positions[i];
      return { glyph: codepoint, cluster, advance: xAdvance, offset: [xOffset, yOffset] };
    });
  };
  return {
    name: file.name,
    unitsPerEm: face.upem,
    capHeight: capHeightOf(engine, font, face.upem),
    has: (codePoint) => font.nominalGlyph(codePoint) !== undefined,
    shape,
    outline: (glyph) => font.glyphToPath(glyph),
  };
}

function capHeightOf(engine: typeof Engine, font: Engine.Font, unitsPerEm: number): number {
  const capital = font.nominalGlyph("H".codePointAt(0) ?? 0);
  // The letter first: tables are up to 2 % off it (Alegreya 637 and 650, Nunito 705 and 714 of 1000).
  const found = [
    capital === undefined ? undefined : font.glyphExtents(capital)?.yBearing,
    font.getMetricPosition(engine.MetricsTag.CAP_HEIGHT),
  ].find(
    (height) => height !== undefined && height >= CAP_RANGE[0] * unitsPerEm && height <= CAP_RANGE[1] * unitsPerEm,
  );
  return found ?? USUAL_CAP * unitsPerEm;
}
