/**
 * A span of the unrolled band, enlarged: its seat with what is raised and cut, degrees beneath it, and rings about places.
 */
import type { Point2 } from "../../base/math/point.js";
import type { UnrolledBand } from "../../judge/details/unrolled-band.js";
import type { FlatRings } from "../../relief/tile-outlines.js";
import { COLOURS, PENS, rampFill } from "./pens.js";
import { element, group, pathData } from "./svg.js";
import { SIZES, textAt } from "./svg-text.js";

/** A place to be ringed. */
export interface RingedPlace {
  /** Degrees on the ring, and mm across the seat. */
  readonly angle: number;
  readonly v: number;
  /** Stands beside the ring. */
  readonly label: string;
  /** Whether the ring stands out. */
  readonly grave: boolean;
}

export interface BandRow {
  /** Which span, from u to u, mm. */
  readonly from: number;
  readonly to: number;
  /** How many times as large it is drawn. */
  readonly scale: number;
  /** Where its left end meets the seat's middle line. */
  readonly at: Point2;
}

/** Radius of rings on the sheet, mm, and the width of their line. */
const RING = 1.6;
const RING_LINE = 0.25;

/** Degrees between the marks beneath a row, and their length, mm. */
const TICK = 10;
const TICK_LENGTH = 1;

/** Draws a stretch. `index` names its clip. */
export function bandRow(row: BandRow, index: number, band: UnrolledBand, places: readonly RingedPlace[]): string {
  const { around, seatLength, start } = band;
  const { from, to, scale, at } = row;
  const place = ([u, v]: Point2): Point2 => [at[0] + scale * (u - from), at[1] - scale * v];
  const uOf = (angle: number) => {
    const share = (angle - start) / 360;
    return (share - Math.floor(share)) * around;
  };
  const shown = (angle: number) => uOf(angle) >= from && uOf(angle) < to;
  const [left, top] = place([from, seatLength / 2]);
  const box = { x: left, y: top, width: scale * (to - from), height: scale * seatLength };
  const id = `row-${index}`;
  const shape = (fill: string) => (rings: FlatRings) => {
    const d = pathData(
      rings.map((ring) => ring.map(place)),
      true,
    );
    return element("path", { d, ...PENS.fine, fill, "fill-rule": "evenodd", "clip-path": `url(#${id})` });
  };
  const ticks = Array.from({ length: 360 / TICK }, (_, i) => i * TICK).filter(shown);
  return group(
    "row",
    element("clipPath", { id }, element("rect", box)),
    ...band.raised.map(shape(rampFill("raised", 0, 1))),
    ...band.cut.map(shape(rampFill("sunk", 0, 1))),
    element("rect", { ...box, ...PENS.thick }),
    ...ticks.map((angle) => tick(place([uOf(angle), -seatLength / 2]), `${angle}°`)),
    ...places.filter(({ angle }) => shown(angle)).map((one) => ring(place([uOf(one.angle), one.v]), one)),
  );
}

function tick([x, y]: Point2, label: string): string {
  const line: Point2[] = [
    [x, y],
    [x, y + TICK_LENGTH],
  ];
  return (
    element("path", { d: pathData([line], false), ...PENS.thin }) +
    textAt([x, y + TICK_LENGTH + SIZES.small], label, { size: SIZES.small, anchor: "middle" })
  );
}

function ring([x, y]: Point2, { label, grave }: RingedPlace): string {
  const stroke = grave ? COLOURS.accent : COLOURS.ink;
  const font = { "font-family": "sans-serif", "font-size": SIZES.body, "font-weight": "bold", fill: stroke };
  return group(
    "place",
    element("circle", { cx: x, cy: y, r: RING, fill: "none", stroke, "stroke-width": RING_LINE }),
    element("text", { x: x + RING, y: y - RING + SIZES.body / 3, ...font }, label),
  );
}
