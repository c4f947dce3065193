/**
 * Leader lines as ISO 128-2 draws them (from memory): from an arrowhead on the object straight to a text; texts stand side by
 * side in a row, in the order of what they point at, so that no two leaders cross.
 */
import type { Point2 } from "../../base/math/point.js";
import { arrowHead } from "./dimension.js";
import { PENS } from "./pens.js";
import { element, group, pathData } from "./svg.js";
import { SIZES, textAt, textWidth } from "./svg-text.js";

/** Something to be told of a point. */
export interface Leader {
  readonly at: Point2;
  readonly text: string;
}

export interface LeaderRow {
  /** y of the texts' base line. */
  readonly y: number;
  /** Where upright lines pass through the row: texts keep clear of them. */
  readonly lines: readonly number[];
  /** The row's ends. */
  readonly from: number;
  readonly to: number;
}

/** From text to text, and from a text to a line, mm. */
const CLEAR = 1.2;

/** Step by which a free place is looked for, mm. */
const STEP = 0.25;

/** Length of the arrowhead of a leader, mm. */
const ARROW = 1.4;

/** Leaders with their texts in a row above or beneath what they point at. */
export function leaderRow(leaders: readonly Leader[], row: LeaderRow): string[] {
  const sorted = [...leaders].sort((a, b) => a.at[0] - b.at[0]);
  const places = placeTexts(
    sorted.map(({ at, text }) => ({ wanted: at[0], width: textWidth(text, SIZES.body) })),
    row,
  );
  return sorted.map(({ at, text }, i) => {
    const above = row.y < at[1];
    const end: Point2 = [places[i], above ? row.y + 0.5 : row.y - SIZES.body * 0.85];
    const length = Math.hypot(end[0] - at[0], end[1] - at[1]);
    const foot: Point2 = [at[0] + ((end[0] - at[0]) * ARROW) / length, at[1] + ((end[1] - at[1]) * ARROW) / length];
    return group(
      "leader",
      element("path", { d: pathData([[at, end]], false), ...PENS.thin }),
      arrowHead(at, foot),
      textAt([places[i], row.y], text, { anchor: "middle" }),
    );
  });
}

interface Wanted {
  readonly wanted: number;
  readonly width: number;
}

/** Middles of texts from left to right, each as near to where it is wanted as those before it and the lines leave it. */
function placeTexts(texts: readonly Wanted[], { lines, from, to }: LeaderRow): number[] {
  const places: number[] = [];
  let left = from;
  texts.forEach(({ wanted, width }, i) => {
    const rest = texts.slice(i + 1).reduce((sum, text) => sum + text.width + CLEAR, 0);
    const free = (middle: number) => lines.every((x) => Math.abs(x - middle) >= width / 2 + CLEAR);
    let middle = Math.max(left + width / 2, Math.min(wanted, to - rest - width / 2));
    while (!free(middle)) middle += STEP;
    places.push(middle);
    left = middle + width / 2 + CLEAR;
  });
  return places;
}
