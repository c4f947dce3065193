/**
 * A drawing that stands on a sheet among others: its size and what is in it, from its top left corner.
 */
import { element, group, svgDocument } from "./svg.js";
import { SIZES, textAt } from "./svg-text.js";

export interface Figure {
  /** Class of its group, kebab-case. */
  readonly name: string;
  readonly title: string;
  /** As ISO 5455 writes it: 10:1. */
  readonly scale: string;
  /** mm on paper. */
  readonly width: number;
  readonly height: number;
  /** SVG in mm. */
  readonly content: readonly string[];
}

/** The figure as an element of a page, at its size. */
export function figureElement({ name, title, width, height, content }: Figure): string {
  const view = `0 0 ${Number(width.toFixed(4))} ${Number(height.toFixed(4))}`;
  const size = { width: `${Number(width.toFixed(4))}mm`, height: `${Number(height.toFixed(4))}mm`, viewBox: view };
  const label = { role: "img", "aria-label": title, class: name };
  return element("svg", { xmlns: "http://www.w3.org/2000/svg", ...size, ...label }, ...content);
}

/** Widest figure that a sheet of A4 or Letter holds between its margins, mm. */
export const WIDEST = 178;

/** The figure itself, or, where it is too wide, turned by a quarter so that it reads from the right. */
export function fitted(figure: Figure): Figure {
  if (figure.width <= WIDEST) return figure;
  const { width, height, content } = figure;
  const transform = `translate(${Number(height.toFixed(4))} 0) rotate(90)`;
  return { ...figure, width: height, height: width, content: [element("g", { transform }, ...content)] };
}

/** Round the figures of a drawing of their own, mm. */
const MARGIN = 8;
const GAP = 6;

/** Figures beneath each other as a document of their own. */
export function stackFigures(figures: readonly Figure[], title: string): string {
  const width = Math.max(...figures.map((figure) => figure.width));
  let y = MARGIN;
  const placed = figures.map(({ name, title: caption, scale, height, content }) => {
    const heading = textAt([MARGIN, y + SIZES.title], `${caption}, ${scale}`, { size: SIZES.title, bold: true });
    const top = y + 2 * SIZES.title;
    y = top + height + GAP;
    const moved = element("g", { transform: `translate(${MARGIN} ${Number(top.toFixed(4))})` }, ...content);
    return group(name, heading, moved);
  });
  return svgDocument(width + 2 * MARGIN, y - GAP + MARGIN, title, ...placed);
}
