/**
 * The setter's map: every stone at true size on the band laid flat, numbered by its size as in the ordering table.
 */
import type { Band } from "../../band/band.js";
import type { BandSurface } from "../../band/surface/surface.js";
import type { Point2 } from "../../base/math/point.js";
import { findCut } from "../../gems/cuts/catalogue.js";
import { outlinePoints } from "../../gems/outline.js";
import type { OrderRow } from "../../stones/order-stones.js";
import type { PlacedStone } from "../../stones/placed-stone.js";
import type { Figure } from "../drawing/figure.js";
import { PENS } from "../drawing/pens.js";
import { SCALE_BAR, scaleBar } from "../drawing/scale-bar.js";
import { element, pathData } from "../drawing/svg.js";
import { SIZES, textAt, textWidth } from "../drawing/svg-text.js";
import { turnOnBand } from "./stones-in-view.js";

/** Class of the figure. */
export const STONE_MAP = "stone-map";

/** Height of a number over the width of its stone, and at least, mm: what is read at print (chosen). */
const NUMBER_SHARE = 0.6;
const LEAST_NUMBER = 1.8;

/** A number is inside a stone that it leaves so much of the width; others are led out. */
const INSIDE_SHARE = 0.9;

/** Height of a number's middle over its baseline, of its size. */
const RAISED = 0.35;

/** How far chords lie inside a drawn outline, mm. */
const FINE = 0.01;

/** mm; long enough that a print at 97 % shows on any ruler. */
const BAR = 20;

/** Round the map, and between its parts, mm. */
const EDGE = 2;
const LINE = 3.2;

/** What a map is drawn of. */
export interface StoneMapSource {
  readonly rows: readonly OrderRow[];
  readonly band: Band;
  readonly wrap: BandSurface;
}

/** The map: from the back of the ring over its top and round again, +z up. */
export function drawStoneMap({ rows, band, wrap }: StoneMapSource): Figure {
  const { round } = wrap;
  const half = band.width / 2;
  const led = ledNumbers(rows, round);
  const lift = led.reduce((most, { level }) => Math.max(most, level + 1), 0) * LEVEL;
  const at = ([u, v]: Point2): Point2 => [EDGE + u, EDGE + lift + half - v];
  const edges = [half, -half].map((v) =>
    element("path", { d: pathData([[at([0, v]), at([round, v])]], false), ...PENS.thick }),
  );
  const top = wrap.uAt(Math.PI / 2);
  const stones = rows.flatMap(({ number, stones: alike }) =>
    alike.flatMap((stone) => drawStone(stone, number, round, at)),
  );
  const bottom = EDGE + lift + 2 * half;
  const legend = rows.map(({ number, cutTitle, gemName, length, width, count }, i) => {
    const size = length === width ? `${length.toFixed(2)} mm` : `${length.toFixed(2)} × ${width.toFixed(2)} mm`;
    return textAt(
      [EDGE, bottom + 6 + LINE * (i + 1)],
      `${number}: ${count} of ${size}, ${cutTitle.toLowerCase()}, ${gemName.toLowerCase()}`,
      {
        size: SIZES.small,
      },
    );
  });
  const barTop = bottom + 8 + LINE * (rows.length + 1);
  return {
    name: STONE_MAP,
    title: "Map of stones, unrolled",
    scale: "1:1",
    width: led.reduce((most, { x }) => Math.max(most, x), round) + 2 * EDGE,
    height: barTop + SCALE_BAR.clear,
    content: [
      ...edges,
      element("path", { d: pathData([[at([top, half]), at([top, -half])]], false), ...PENS.dashed }),
      textAt([at([top, 0])[0], bottom + 3], "top", { size: SIZES.small, anchor: "middle" }),
      ...stones,
      ...led.flatMap((one) => drawLed(one, lift, at)),
      ...legend,
      scaleBar([EDGE, barTop], BAR),
      textAt([EDGE + BAR + 8, barTop + SIZES.small], `Measure the bar: ${BAR} mm, or the print is not true.`, {
        size: SIZES.small,
      }),
    ],
  };
}

/** Its outline with its number; what goes over the ends of the map is drawn at both. */
function drawStone(
  { stone, surface, along }: PlacedStone,
  number: number,
  round: number,
  at: (place: Point2) => Point2,
): string[] {
  const turn = turnOnBand({ surface, along });
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const u = surface.u - round * Math.floor(surface.u / round);
  const outline = outlinePoints(findCut(stone.cut).outline(stone), FINE);
  const size = numberSize(stone.width);
  const reach = stone.length / 2;
  const middles = [u, ...(u < reach ? [u + round] : []), ...(u > round - reach ? [u - round] : [])];
  return middles.flatMap((middle) => {
    const ring = outline.map(([x, y]) => at([middle + cos * x - sin * y, surface.v + sin * x + cos * y]));
    const [x, y] = at([middle, surface.v]);
    return [
      element("path", { class: "stone", d: pathData([ring], true), ...PENS.fine, fill: "#ffffff" }),
      ...(isInside(stone.width, number)
        ? [textAt([x, y + RAISED * size], String(number), { size, anchor: "middle" })]
        : []),
    ];
  });
}

function numberSize(width: number): number {
  return Math.max(LEAST_NUMBER, NUMBER_SHARE * width);
}

function isInside(width: number, number: number): boolean {
  const size = numberSize(width);
  return Math.max(size * CAPITAL, textWidth(String(number), size)) <= INSIDE_SHARE * width;
}

/** Height of a digit, of its size. */
const CAPITAL = 0.72;

/** A number above the band that stands for stones one after another of one size; `u`, `v`: of the middle one. */
interface LedNumber {
  readonly number: number;
  readonly u: number;
  readonly v: number;
  /** Middle of the number, mm along the map, and in which line above the band it stands. */
  readonly x: number;
  readonly level: number;
}

/** Lines of numbers above the band at most, how far apart, and the room between two in a line, mm. */
const LEVELS = 4;
const LEVEL = 2.6;
const CLEAR = 0.8;

/** Numbers of stones that are too small for them, once for each run of one size along the band. */
function ledNumbers(rows: readonly OrderRow[], round: number): LedNumber[] {
  const all = rows
    .flatMap(({ number, stones }) => stones.map(({ stone, surface: { u, v } }) => ({ number, stone, u, v })))
    .map((one) => ({ ...one, u: one.u - round * Math.floor(one.u / round) }))
    .sort((a, b) => a.u - b.u);
  const runs: (typeof all)[] = [];
  for (const one of all) {
    const run = runs.at(-1);
    if (run?.[0].number === one.number) run.push(one);
    else runs.push([one]);
  }
  const ends = new Array<number>(LEVELS).fill(0);
  return runs.flatMap((run): LedNumber[] => {
    const { number, u, v, stone } = run[Math.floor(run.length / 2)];
    if (isInside(stone.width, number)) return [];
    const wide = textWidth(String(number), LEAST_NUMBER) + CLEAR;
    const free = ends.findIndex((end) => end <= u - wide / 2);
    const level = free === -1 ? ends.indexOf(Math.min(...ends)) : free;
    const x = Math.max(u, ends[level] + wide / 2);
    ends[level] = x + wide / 2;
    return [{ number, u, v, x, level }];
  });
}

/** The number with its line down to the stone. */
function drawLed({ number, u, v, x, level }: LedNumber, lift: number, at: (place: Point2) => Point2): string[] {
  const baseline = EDGE + lift - LEVEL * level - CLEAR;
  const foot: Point2 = [EDGE + x, baseline + CLEAR / 2];
  return [
    element("path", { d: pathData([[foot, at([u, v])]], false), ...PENS.fine }),
    textAt([EDGE + x, baseline], String(number), { size: LEAST_NUMBER, anchor: "middle" }),
  ];
}
