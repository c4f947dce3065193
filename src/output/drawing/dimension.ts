/**
 * Dimensions as ISO 129-1 draws them: extension lines that start clear of the object, a dimension line with filled
 * arrowheads, the text beyond the line, where it is free of everything else however short the line is.
 */
import type { Point2 } from "../../base/math/point.js";
import { COLOURS, PENS } from "./pens.js";
import { element, group, pathData } from "./svg.js";
import { SIZES, textAt, textWidth } from "./svg-text.js";

/** Arrowhead, mm: length, and width at an angle of about 20°. */
const ARROW = { length: 1.4, width: 0.5 } as const;

/** Extension lines go this far beyond the dimension line, mm. */
const BEYOND = 0.8;

/** From the end of the extension lines to the text, mm. */
const TEXT_GAP = 0.6;

/** Lines shorter than this many arrowheads have them outside, pointing in. */
const ROOM = 3;

/** Tails of arrows that stand outside, mm. */
const TAIL = 1.2;

/** Room that a dimension takes beyond its line, mm: two lines of text and their gaps. */
export const DIMENSION_DEPTH = BEYOND + TEXT_GAP + 2 * SIZES.body + 0.6;

/** Room that an upright dimension takes beside its line for texts of up to ten characters, mm. */
export const DIMENSION_WIDTH = BEYOND + TEXT_GAP + 14;

/** Room that an upright dimension takes beside its line for its own texts, mm. */
export function uprightWidth({ label, value }: Pick<DimensionOptions, "label" | "value">): number {
  return BEYOND + TEXT_GAP + Math.max(textWidth(value, SIZES.body), textWidth(label, SIZES.small));
}

export interface DimensionOptions {
  /** Where the dimension line runs: y of a level one, x of an upright one. */
  readonly at: number;
  /** Where the extension lines start, on the object's side. */
  readonly start: number;
  /** What is measured, and the number, beneath or beside the line. */
  readonly label: string;
  readonly value: string;
  /** How far an upright dimension's text stands from the middle of its line, mm down. Default 0. */
  readonly shift?: number;
}

/** What an upright dimension's text takes above and below its place, mm. */
export const UPRIGHT_TEXT = { above: SIZES.body, below: SIZES.body + 0.6 } as const;

/** A level dimension from x to x; its text lies on the far side of the object. */
export function levelDimension(from: number, to: number, { at, start, label, value }: DimensionOptions): string {
  const away = Math.sign(at - start);
  const edge = at + away * (BEYOND + TEXT_GAP);
  const [first, second] = away > 0 ? [edge + SIZES.body * 0.8, edge + SIZES.body * 2] : [edge - SIZES.body * 1.2, edge];
  const middle = (from + to) / 2;
  return group(
    "dimension",
    extension([from, start], [from, at + away * BEYOND]),
    extension([to, start], [to, at + away * BEYOND]),
    ...arrowLine(from, to, (s) => [s, at]),
    textAt([middle, first], value, { anchor: "middle" }),
    textAt([middle, second], label, { anchor: "middle", size: SIZES.small }),
  );
}

/** An upright dimension from y to y; its text lies level on the far side of the object. */
export function uprightDimension(from: number, to: number, options: DimensionOptions): string {
  const { at, start, label, value, shift = 0 } = options;
  const away = Math.sign(at - start);
  const edge = at + away * (BEYOND + TEXT_GAP);
  const anchor = away > 0 ? "start" : "end";
  const middle = (from + to) / 2 + shift;
  return group(
    "dimension",
    extension([start, from], [at + away * BEYOND, from]),
    extension([start, to], [at + away * BEYOND, to]),
    ...arrowLine(from, to, (s) => [at, s]),
    textAt([edge, middle - 0.2], value, { anchor }),
    textAt([edge, middle + SIZES.body], label, { anchor, size: SIZES.small }),
  );
}

function extension(from: Point2, to: Point2): string {
  return element("path", { d: pathData([[from, to]], false), ...PENS.thin });
}

/** The dimension line with its two arrowheads. */
function arrowLine(from: number, to: number, place: (s: number) => Point2): string[] {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const inside = high - low >= ROOM * ARROW.length;
  const reach = inside ? 0 : ARROW.length + TAIL;
  const line = pathData([[place(low - reach), place(high + reach)]], false);
  const inwards = inside ? 1 : -1;
  return [
    element("path", { d: line, ...PENS.thin }),
    arrowHead(place(low), place(low + inwards * ARROW.length)),
    arrowHead(place(high), place(high - inwards * ARROW.length)),
  ];
}

/** A filled arrowhead with its tip at a point and the middle of its foot at another. */
export function arrowHead(tip: Point2, foot: Point2): string {
  const [dx, dy] = [(foot[0] - tip[0]) / ARROW.length, (foot[1] - tip[1]) / ARROW.length];
  const half = ARROW.width / 2;
  const side = (turn: number): Point2 => [foot[0] - turn * half * dy, foot[1] + turn * half * dx];
  return element("path", { d: pathData([[tip, side(1), side(-1)]], true), fill: COLOURS.ink });
}
