/**
 * A region whose art is a text, set in its tile as an SVG file is.
 */
import type { RegionsOf } from "../../design/areas.js";
import type { TextArt } from "../../design/art/text-art.js";
import type { Drawing } from "../svg/drawing.js";
import type { FontUse } from "./load-fonts.js";
import { setText } from "./set-text.js";
import { textDrawing } from "./text-drawing.js";
import type { Typeface } from "./typeface.js";

/** The fonts that regions name, each with its place. */
export function textFonts(lists: readonly RegionsOf[]): FontUse[] {
  return placedTexts(lists).map(({ text, where }) => ({ name: text.font, where: `${where}.font` }));
}

function placedTexts(lists: readonly RegionsOf[]): { readonly text: TextArt; readonly where: string }[] {
  return lists.flatMap(({ regions, where }) =>
    regions.flatMap(({ text }, i) => (text === undefined ? [] : [{ text, where: `${where}.regions[${i}].text` }])),
  );
}

/** The name under which a text's drawing is kept. */
export function textName(text: TextArt): string {
  return `text ${JSON.stringify(text)}`;
}

/** Height of capitals where the place decides on the size, mm: spacing is true at that size and grows with it. */
const NOMINAL_HEIGHT = 2;

/**
 * The drawings of all texts, by name. One that states its height has a page as wide as the line and as high as its
 * capitals; others go by what is seen of them.
 *
 * @throws AnnuletError as `setText`
 */
export function textDrawings(lists: readonly RegionsOf[], fonts: ReadonlyMap<string, Typeface>): Map<string, Drawing> {
  const drawings = new Map<string, Drawing>();
  for (const { text, where: place } of placedTexts(lists)) {
    const typeface = fonts.get(text.font);
    if (typeface === undefined) throw new Error("fonts are loaded before texts are set");
    const where = `${place}.text`;
    const height = text.height ?? NOMINAL_HEIGHT;
    const line = setText(typeface, text.text, { height, spacing: text.spacing, where });
    const drawing = textDrawing(line, { name: text.text, height, where });
    drawings.set(textName(text), text.height === undefined ? { ...drawing, page: undefined } : drawing);
  }
  return drawings;
}
