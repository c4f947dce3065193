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
import { SIZES, textAt } from "../drawing/svg-text.js";
import { turnOnBand } from "./stones-in-view.js";

/** Class of the figure. */
export const STONE_MAP = "stone-map";

/** Height of a number over the width of its stone. */
const NUMBER_SHARE = 0.6;

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
  const at = ([u, v]: Point2): Point2 => [EDGE + u, EDGE + half - v];
  const edges = [half, -half].map((v) =>
    element("path", { d: pathData([[at([0, v]), at([round, v])]], false), ...PENS.thick }),
  );
  const top = wrap.uAt(Math.PI / 2);
  const stones = rows.flatMap(({ number, stones: alike }) =>
    alike.flatMap((stone) => drawStone(stone, number, round, at)),
  );
  const bottom = EDGE + 2 * half;
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
    width: round + 2 * EDGE,
    height: barTop + SCALE_BAR.clear,
    content: [
      ...edges,
      element("path", { d: pathData([[at([top, half]), at([top, -half])]], false), ...PENS.dashed }),
      textAt([at([top, 0])[0], bottom + 3], "top", { size: SIZES.small, anchor: "middle" }),
      ...stones,
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
  const size = NUMBER_SHARE * stone.width;
  const reach = stone.length / 2;
  const middles = [u, ...(u < reach ? [u + round] : []), ...(u > round - reach ? [u - round] : [])];
  return middles.flatMap((middle) => {
    const ring = outline.map(([x, y]) => at([middle + cos * x - sin * y, surface.v + sin * x + cos * y]));
    const [x, y] = at([middle, surface.v]);
    return [
      element("path", { class: "stone", d: pathData([ring], true), ...PENS.fine, fill: "#ffffff" }),
      textAt([x, y + RAISED * size], String(number), { size, anchor: "middle" }),
    ];
  });
}
