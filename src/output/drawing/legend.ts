/**
 * Blocks of notes beneath a drawing: a heading, then lines, each with a sample of what it explains where it has one.
 */
import type { Point2 } from "../../base/math/point.js";
import { PENS, REGION_SHADE } from "./pens.js";
import { element, pathData } from "./svg.js";
import { charactersIn, SIZES, shorten, textAt } from "./svg-text.js";
import { lens } from "./symmetry-marks.js";

/** A line of notes. */
export interface LegendLine {
  readonly text: string;
  /** Draws a sample about a point. */
  readonly sample?: (middle: Point2) => string;
  /** Stands at the right end of the block. */
  readonly value?: string;
}

export interface LegendBlock {
  readonly heading: string;
  readonly lines: readonly LegendLine[];
}

/** From line to line, and from block to block, mm. */
const STEP = 3;
const BLOCK_GAP = 2.5;

/** Room for samples left of the text, mm, and their own width. */
const SAMPLE_ROOM = 7;
const SAMPLE = { width: 5, height: 1.8 } as const;

/** Height of blocks beneath each other, mm. */
export function legendHeight(blocks: readonly LegendBlock[]): number {
  return blocks.reduce((sum, { lines }) => sum + (lines.length + 1.3) * STEP + BLOCK_GAP, 0);
}

/** Blocks beneath each other in a column. */
export function legendColumn(blocks: readonly LegendBlock[], [x, top]: Point2, width: number): string[] {
  let y = top;
  return blocks.flatMap(({ heading, lines }) => {
    y += STEP;
    const drawn = [textAt([x, y], heading, { size: SIZES.small, bold: true })];
    y += 0.3 * STEP;
    for (const line of lines) {
      y += STEP;
      drawn.push(...legendLine(line, [x, y], width));
    }
    y += BLOCK_GAP;
    return drawn;
  });
}

function legendLine({ text, sample, value }: LegendLine, [x, y]: Point2, width: number): string[] {
  const left = sample === undefined ? x : x + SAMPLE_ROOM;
  const taken = charactersIn(width - (left - x), SIZES.small) - (value === undefined ? 0 : value.length + 2);
  return [
    ...(sample === undefined ? [] : [sample([x + SAMPLE.width / 2, y - SIZES.small / 3])]),
    textAt([left, y], shorten(text, taken), { size: SIZES.small }),
    ...(value === undefined ? [] : [textAt([x + width, y], value, { size: SIZES.small, anchor: "end" })]),
  ];
}

/** A sample box with a fill. */
export function fillSample(fill: Readonly<Record<string, string | number>>, edged: boolean) {
  return ([x, y]: Point2): string => {
    const { width, height } = SAMPLE;
    const box = { x: x - width / 2, y: y - height / 2, width, height };
    return element("rect", { ...box, ...(edged ? PENS.thin : {}), ...fill });
  };
}

function lineSample(pen: typeof PENS.mirror | typeof PENS.glide) {
  return ([x, y]: Point2): string => {
    const ends: Point2[] = [
      [x - SAMPLE.width / 2, y],
      [x + SAMPLE.width / 2, y],
    ];
    return element("path", { d: pathData([ends], false), ...pen });
  };
}

/** What the marks of symmetry mean. */
export const SYMMETRY_LINES = {
  region: { text: "fundamental region", sample: fillSample(REGION_SHADE, false) },
  mirror: { text: "mirror", sample: lineSample(PENS.mirror) },
  glide: { text: "glide", sample: lineSample(PENS.glide) },
  centre: { text: "two-fold centre", sample: lens },
} as const satisfies Readonly<Record<string, LegendLine>>;
