/**
 * A set text as a drawing, so that letters are flattened, united and placed as an SVG file's shapes are.
 */

import { readPathData } from "../../base/math/path-data.js";
import { MM_PER_INCH } from "../../base/units.js";
import type { Drawing } from "../svg/drawing.js";
import { PX_PER_INCH } from "../svg/length.js";
import type { SetText } from "./set-text.js";

/** px in a millimetre, as in SVG. */
export const PX_PER_MM = PX_PER_INCH / MM_PER_INCH;

export interface TextDrawingOptions {
  readonly name: string;
  /** Height of capitals, mm. */
  readonly height: number;
  /** Where the text stands in the document, for errors. */
  readonly where: string;
}

/**
 * The drawing of a text, each glyph a shape of its own. Its page begins at the line's start and is as wide as the text
 * and as high as its capitals, the base line its lower edge.
 */
export function textDrawing({ glyphs, scale, advance }: SetText, options: TextDrawingOptions): Drawing {
  const { name, height, where } = options;
  const size = scale * PX_PER_MM;
  return {
    name,
    page: { x: 0, y: -height * PX_PER_MM, width: advance * PX_PER_MM, height: height * PX_PER_MM },
    shapes: glyphs.map(({ characters, outline, origin: [x, y] }) => ({
      subpaths: readPathData(outline, where),
      map: [size, 0, 0, -size, x * PX_PER_MM, -y * PX_PER_MM],
      fill: "nonzero",
      stroke: undefined,
      clips: [],
      what: `the letter ${characters}`,
    })),
  };
}
