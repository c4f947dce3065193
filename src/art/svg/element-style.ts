/**
 * What an element's properties come to: attributes, then style sheet, then its style attribute; inherited or not.
 * SVG 1.1 (Second Edition), 6 and appendix N (which properties are inherited); SVG 2, 7 (sizes and places as properties).
 */
import type { Element } from "@xmldom/xmldom";
import { attribute } from "./element.js";
import { type FontSizes, INITIAL_FONTS, parseLength } from "./length.js";
import { type Declaration, declarationsFor, parseDeclarations, type StyleSheet } from "./stylesheet.js";

/** Inherited properties with their initial values. */
const INHERITED = {
  fill: "black",
  "fill-rule": "nonzero",
  "fill-opacity": "1",
  "clip-rule": "nonzero",
  stroke: "none",
  "stroke-width": "1",
  "stroke-linecap": "butt",
  "stroke-linejoin": "miter",
  "stroke-miterlimit": "4",
  "stroke-dasharray": "none",
  "stroke-dashoffset": "0",
  "stroke-opacity": "1",
  "marker-start": "none",
  "marker-mid": "none",
  "marker-end": "none",
  "font-size": "medium",
  color: "black",
  visibility: "visible",
} as const;

/** Other properties with their initial values. */
const OWN = {
  display: "inline",
  opacity: "1",
  "clip-path": "none",
  mask: "none",
  "mask-type": "luminance",
  filter: "none",
  overflow: "",
  transform: "",
  "transform-origin": "",
  "vector-effect": "none",
  // Sizes and places; empty where they are not given.
  x: "",
  y: "",
  width: "",
  height: "",
  cx: "",
  cy: "",
  r: "",
  rx: "",
  ry: "",
  d: "",
} as const;

type Inherited = keyof typeof INHERITED;
type Own = keyof typeof OWN;

/** Every property that drawing looks at, as text. */
export type Style = Readonly<Record<Inherited | Own, string>> & {
  /** What em and rem are. */
  readonly fonts: FontSizes;
};

export const INITIAL_STYLE: Style = { ...INHERITED, ...OWN, fonts: INITIAL_FONTS };

const inheritedNames = Object.keys(INHERITED) as readonly Inherited[];
const ownNames = Object.keys(OWN) as readonly Own[];
const properties: ReadonlySet<string> = new Set([...inheritedNames, ...ownNames]);

/** The element's style within its parent's. */
export function styleOf(element: Element, parent: Style, sheet: StyleSheet): Style {
  const declared = cascade(element, sheet);
  const em = fontSizeOf(declared.get("font-size"), parent.fonts);
  const fonts = { em, rem: parent === INITIAL_STYLE ? em : parent.fonts.rem };
  const style: Record<string, string> = {};
  for (const name of inheritedNames) {
    const value = declared.get(name);
    style[name] =
      value === undefined || value === "inherit" || value === "unset"
        ? parent[name]
        : value === "initial"
          ? INHERITED[name]
          : value;
  }
  for (const name of ownNames) {
    const value = declared.get(name);
    style[name] =
      value === "inherit"
        ? parent[name]
        : value === undefined || value === "initial" || value === "unset"
          ? OWN[name]
          : value;
  }
  return { ...style, fonts } as Style;
}

/** Sizes by name, px, as browsers have them (no source), and how much a step is (CSS Fonts 3, 3.5). */
const SIZES: Readonly<Record<string, number>> = {
  "xx-small": 9,
  "x-small": 10,
  small: 13,
  medium: 16,
  large: 18,
  "x-large": 24,
  "xx-large": 32,
};
const STEP = 1.2;

/** The height of letters, px: shares are of the parent's. What is no size changes nothing. */
function fontSizeOf(text: string | undefined, { em, rem }: FontSizes): number {
  if (text === undefined) return em;
  if (text === "initial") return SIZES.medium;
  if (text === "larger" || text === "smaller") return text === "larger" ? em * STEP : em / STEP;
  const size = SIZES[text] ?? parseLength(text, em, { em, rem });
  return size !== undefined && size >= 0 ? size : em;
}

function cascade(element: Element, sheet: StyleSheet): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const { name, value } of element.attributes) {
    if (properties.has(name) && value.trim() !== "") found.set(name, value.trim());
  }
  const declarations: Declaration[] = [
    ...declarationsFor(sheet, element),
    ...parseDeclarations(attribute(element, "style") ?? ""),
  ];
  for (const strong of [false, true]) {
    for (const { property, value, important } of declarations) {
      if (important === strong) found.set(property, value);
    }
  }
  return found;
}
