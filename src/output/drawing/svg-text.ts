/**
 * Text on drawings: SVG text in a generic font, so its width can only be estimated.
 */
import type { Point2 } from "../../base/math/point.js";
import { COLOURS } from "./pens.js";
import { element, escapeText } from "./svg.js";

/** Sizes of text, mm: the smallest of the series of ISO 3098-1 (from memory), which read on paper. */
export const SIZES = { title: 3.5, body: 2.5, small: 1.8 } as const;

export interface TextOptions {
  /** Font size, mm. Default body. */
  readonly size?: number;
  /** Which part of the text stands at the point. Default start. */
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
}

/** One line of text whose baseline runs through the point. */
export function textAt([x, y]: Point2, content: string, options: TextOptions = {}): string {
  const { size = SIZES.body, anchor, bold } = options;
  const style = {
    "font-family": "sans-serif",
    "font-size": size,
    "font-weight": bold ? "bold" : undefined,
    "text-anchor": anchor === "start" ? undefined : anchor,
    fill: COLOURS.ink,
  };
  return element("text", { x, y, ...style }, escapeText(content));
}

/** Width of a character over the font size: above the mean of wide sans-serif fonts, so that text fits. */
const CHARACTER = 0.6;

/** Room that a text of a size takes along its line, mm. */
export function textWidth(text: string, size: number): number {
  return CHARACTER * size * Array.from(text).length;
}

/** Characters of a size, mm, that fit a width, mm. */
export function charactersIn(width: number, size: number): number {
  return Math.max(1, Math.floor(width / (CHARACTER * size)));
}

/** Text cut to a number of characters, with an ellipsis where something is left out. */
export function shorten(text: string, most: number): string {
  const signs = Array.from(text);
  return signs.length <= most ? text : `${signs.slice(0, Math.max(0, most - 1)).join("")}…`;
}

/** Text in lines of at most so many characters, broken at spaces where there are any. */
export function wrapText(text: string, most: number): string[] {
  const lines: string[] = [];
  let line: string[] = [];
  for (const word of text.split(/\s+/).map((one) => Array.from(one))) {
    const room = most - line.length - (line.length > 0 ? 1 : 0);
    if (word.length <= room) {
      line = line.length > 0 ? [...line, " ", ...word] : word;
      continue;
    }
    if (line.length > 0) lines.push(line.join(""));
    line = word;
    while (line.length > most) {
      lines.push(line.slice(0, most).join(""));
      line = line.slice(most);
    }
  }
  return line.length > 0 ? [...lines, line.join("")] : lines;
}
