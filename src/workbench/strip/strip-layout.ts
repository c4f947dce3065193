/**
 * What is shown along the band: the own tile and its copies, where the strip begins and ends, and what angle lies where.
 *
 * mm along the band count from the own tile's left border, mm across it from the middle line of the lane that is shown.
 */
import type { DrawnTile } from "../../index.js";

/** Of a flat tile what the strip is laid out by. */
export type LaidTile = Pick<DrawnTile, "part" | "tiles" | "round" | "seatLength"> & {
  readonly fit: Pick<
    DrawnTile["fit"],
    "tileWidth" | "tileHeight" | "rows" | "aspect" | "cycle" | "bandWidth" | "referenceRadius"
  >;
};

/** What else moves the strip. */
export interface StripPlace {
  /** Degrees of the band under the pattern, its medallion's among them. */
  readonly cover: number;
  /** v of the lane's middle line from the seat's, mm. */
  readonly laneMiddle: number;
  /** Whether tiles keep their size on a band that tapers: those near the top are shown. */
  readonly nearTop: boolean;
}

export interface StripLayout {
  readonly tileWidth: number;
  readonly tileHeight: number;
  readonly rows: number;
  readonly aspect: number;
  /** Tiles of the own drawing, and how wide it is, mm. */
  readonly tiles: number;
  readonly period: number;
  readonly seatLength: number;
  readonly bandWidth: number;
  readonly laneMiddle: number;
  /** u of every copy's left border, the own one's, 0, among them. */
  readonly copies: readonly number[];
  /** The whole strip, from u to u. */
  readonly from: number;
  readonly to: number;
  /** The round at the reference radius, mm, and degrees at the own tile's left border. */
  readonly around: number;
  readonly start: number;
  /** Degrees of the band under the pattern. */
  readonly cover: number;
}

const ROUND = 360;

/** The top of the ring, degrees. */
const TOP = 90;

export function layOutStrip(tile: LaidTile, { cover, laneMiddle, nearTop }: StripPlace): StripLayout {
  const { fit, tiles, seatLength } = tile;
  const { tileWidth, tileHeight, rows, aspect, bandWidth } = fit;
  const around = 2 * Math.PI * fit.referenceRadius;
  const period = tiles * tileWidth;
  const { origin, most } = placeOf(tile, { cover, nearTop });
  const count = Math.max(1, Math.floor(most / tiles));
  const before =
    cover === ROUND && tile.round.medallion === 0 && tile.part === "tile" ? Math.floor((count - 1) / 2) : 0;
  const first = nearTop ? -Math.floor(origin / period) : -before;
  const copies = Array.from({ length: count }, (_, i) => (first + i) * period);
  const start = TOP - cover / 2 + (ROUND * origin) / around;
  return {
    ...{
      tileWidth,
      tileHeight,
      rows,
      aspect,
      tiles,
      period,
      seatLength,
      bandWidth,
      laneMiddle,
      copies,
      around,
      start,
      cover,
    },
    from: copies[0],
    to: copies[copies.length - 1] + period,
  };
}

/** u of the own tile on the band, and how many tiles there are. */
function placeOf(
  { part, fit, tiles, round }: LaidTile,
  { cover, nearTop }: Pick<StripPlace, "cover" | "nearTop">,
): { readonly origin: number; readonly most: number } {
  const { repeats, medallion } = round;
  if (part === "medallion") return { origin: ((repeats - medallion) / 2) * (fit.tileWidth / medallion), most: 1 };
  const spread = (cover / ROUND) * 2 * Math.PI * fit.referenceRadius;
  if (part === "ornament") return { origin: spread, most: 1 };
  if (medallion > 0) {
    const whole = cover === ROUND;
    const most = whole ? repeats - medallion : (repeats - medallion) / 2;
    return { origin: whole ? ((repeats + medallion) / 2) * fit.tileWidth : 0, most };
  }
  const skipped = nearTop ? fit.cycle * Math.floor((repeats - tiles) / 2 / fit.cycle) : 0;
  return { origin: skipped * fit.tileWidth, most: repeats };
}

/** Degrees on the ring, counter-clockwise from +x, 0 to 360. */
export function angleAt({ start, around }: StripLayout, u: number): number {
  const angle = (start + (ROUND * u) / around) % ROUND;
  return angle < 0 ? angle + ROUND : angle;
}

/** Where an angle lies on the strip or behind its end, mm. */
export function placeOfAngle(
  { start, around, from }: Pick<StripLayout, "start" | "around" | "from">,
  angle: number,
): number {
  const u = ((angle - start) / ROUND) * around;
  return u - around * Math.floor((u - from) / around);
}

/** v of each row's middle line from the lane's, the lowest first, mm. */
export function rowMiddles({ rows, tileHeight }: Pick<StripLayout, "rows" | "tileHeight">): number[] {
  return Array.from({ length: rows }, (_, row) => (row - (rows - 1) / 2) * tileHeight);
}
