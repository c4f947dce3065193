/**
 * SVG text → drawing: every painted shape as exact curves on the page.
 *
 * SVG 1.1 (Second Edition) and what SVG 2 makes plainer. Units of the page: px, 96 to the inch; y points down.
 * All painted fills and strokes count as art, whatever their colour (see paint.ts).
 */
import type { Element } from "@xmldom/xmldom";
import { AnnuletError, type Warn } from "../../base/errors.js";
import { compose } from "../../base/math/affine.js";
import type { TakeSpec } from "../../design/art/svg-take.js";
import type { Drawing } from "./drawing.js";
import { attribute, describeElement } from "./element.js";
import { INITIAL_STYLE, type Style, styleOf } from "./element-style.js";
import { parseLength } from "./length.js";
import { type ParsedSvg, parseSvg } from "./parse.js";
import { parseStyleSheet, type StyleSheet } from "./stylesheet.js";
import { Take } from "./take.js";
import { type Box, fillViewport, viewBoxOf } from "./viewport.js";
import { outermost, Walk } from "./walk-elements.js";

/** Viewport of a file that names no size, px, for percentages only; the size of CSS's replaced elements (CSS 2.1, 10.3.2). */
const UNSIZED = { width: 300, height: 150 };

/** Most warnings told of one file. */
const MOST_WARNINGS = 20;

/**
 * Reads a drawing.
 *
 * @param name the file's name, for messages
 * @param where its place in the document, for errors
 * @param spec what of it counts; default all that is painted
 * @throws AnnuletError `svg-empty`, `svg-part-unknown`, `svg-malformed`, `svg-not-svg`, `svg-entities`, `svg-too-complex`, `svg-cycle`,
 *   `svg-transform`, `svg-zero-scale`, `svg-length`, `svg-points`, `svg-viewbox`, and as `readPathData`
 */
export function readSvg(text: string, name: string, where: string, warn: Warn, spec?: TakeSpec): Drawing {
  const [tell, tellRest] = limited(warn, where);
  const file = parseSvg(text, where);
  const sheet = sheetOf(file, where, tell);
  const take = new Take(spec);
  const walk = new Walk(file, { sheet, take, warn: tell, where });
  const { root } = file;
  const viewBox = viewBoxOf(root, where);
  const page = pageOf(root, styleOf(root, INITIAL_STYLE, sheet), viewBox);
  const viewport = page ?? { x: 0, y: 0, ...UNSIZED };
  const inner = walk.enter(root, outermost(INITIAL_STYLE, viewport));
  const shapes =
    inner === undefined
      ? []
      : walk.masked(
          root,
          inner,
          walk.children(root, {
            ...inner,
            map: compose(inner.map, fillViewport(viewBox, viewport, attribute(root, "preserveAspectRatio"))),
            viewport: viewBox ?? viewport,
            clips: [...inner.clips, ...(page === undefined ? [] : walk.edge(root, INITIAL_STYLE, page, inner.map))],
          }),
        );
  take.requireAll(name, where);
  if (walk.colours.size > 1) tell(coloursWarning([...walk.colours.values()], where));
  tellRest();
  if (shapes.length === 0) {
    throw new AnnuletError({
      code: "svg-empty",
      message: `the SVG file ${name} draws nothing that can be used`,
      path: where,
      allowed: "at least one shape with a fill or a stroke",
    });
  }
  return { name, page, shapes };
}

/** The outermost viewport: width and height, or the viewBox's where they are missing or a share of the unknown. */
function pageOf(root: Element, style: Style, viewBox: Box | undefined): Box | undefined {
  const measure = (text: string) => {
    const length = text.includes("%") ? undefined : parseLength(text, 0, style.fonts);
    return length !== undefined && length > 0 ? length : undefined;
  };
  // A style that says what a web page wants of it, 100% or auto, leaves the attribute.
  const read = (name: "width" | "height") => measure(style[name]) ?? measure(attribute(root, name) ?? "");
  const [width, height] = [read("width"), read("height")];
  if (width !== undefined && height !== undefined) return { x: 0, y: 0, width, height };
  if (viewBox === undefined) return undefined;
  const ratio = viewBox.height / viewBox.width;
  if (width !== undefined) return { x: 0, y: 0, width, height: width * ratio };
  if (height !== undefined) return { x: 0, y: 0, width: height / ratio, height };
  return { x: 0, y: 0, width: viewBox.width, height: viewBox.height };
}

function sheetOf(file: ParsedSvg, where: string, warn: Warn): StyleSheet {
  const sheet = parseStyleSheet(file.styles.map((style) => style.textContent ?? "").join("\n"), where);
  const unread = [...sheet.unread, ...(file.sheetElsewhere ? ["<?xml-stylesheet?>"] : [])];
  if (unread.length > 0) {
    const [style] = file.styles;
    warn({
      code: "svg-style-unread",
      message: `${unread.length} style rule${unread.length === 1 ? " is" : "s are"} not followed${style === undefined ? "" : ` (${describeElement(style)})`}: ${unread.slice(0, 3).join(", ").slice(0, 200)}`,
      path: where,
      allowed: "rules by element, .class, #id and *",
    });
  }
  return sheet;
}

function coloursWarning(colours: readonly string[], where: string) {
  const shown = colours.slice(0, 5).join(", ");
  return {
    code: "svg-colours",
    message: `the drawing is painted in ${colours.length} colours (${shown}${colours.length > 5 ? ", …" : ""}): all of them are raised alike, white too`,
    path: where,
    hint: `leave a ground out by its colour, e.g. "take": { "without": [${JSON.stringify(colours[0])}] }; cut light shapes out of dark ones in your drawing program`,
  };
}

/** Passes on so many warnings and counts the rest. */
function limited(warn: Warn, where: string): [tell: Warn, rest: () => void] {
  let told = 0;
  const tell: Warn = (warning) => {
    if (++told <= MOST_WARNINGS) warn(warning);
  };
  const rest = () => {
    if (told <= MOST_WARNINGS) return;
    warn({
      code: "svg-more-warnings",
      message: `${told - MOST_WARNINGS} more things in the SVG file are not followed`,
      path: where,
    });
  };
  return [tell, rest];
}
