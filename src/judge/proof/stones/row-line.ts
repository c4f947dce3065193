/**
 * A row of alike stones at one place across the band, as a section in the half plane of every angle that it covers.
 */
import { TURN } from "../../../base/units.js";
import type { Line } from "./span.js";
import type { StoneView } from "./stone-view.js";
import type { Through } from "./through.js";

export interface RowLine {
  readonly stones: readonly StoneView[];
  /** A column as it goes through the section: y across the row, z out of the ring, x how far beyond the row's ends or a stone's middle. */
  readonly line: (through: Through) => Line;
  /** Cosine between a stone's length and the row. */
  readonly along: number;
}

/** Stones of a row stand at one radius and one w, and lean alike, but for rounding, mm. */
const SAME = 1e-5;

/** The rows of a group; undefined where one of them is not such. */
export function rowLines(stones: readonly StoneView[]): RowLine[] | undefined {
  const rows = new Map<string, StoneView[]>();
  stones.forEach((stone, i) => {
    const key = stone.placed.row === undefined ? `alone ${i}` : `row ${stone.placed.row.row}`;
    rows.set(key, [...(rows.get(key) ?? []), stone]);
  });
  const lines = [...rows.values()].map(lineOf);
  return lines.some((line) => line === undefined) ? undefined : (lines as RowLine[]);
}

function lineOf(row: readonly StoneView[]): RowLine | undefined {
  const [first] = row;
  if (row.length === 1) return aloneLine(first);
  const places = row.map(({ placed: { at, out } }) => {
    const radius = Math.hypot(at[0], at[1]);
    return {
      angle: Math.atan2(at[1], at[0]),
      radius,
      w: at[2],
      lean: out[2],
      out: (out[0] * at[0] + out[1] * at[1]) / radius,
    };
  });
  const [{ radius, w, lean, out }] = places;
  const even = places.every((place, i) => {
    const sizes = [
      place.radius - radius,
      place.w - w,
      place.lean - lean,
      place.out - out,
      row[i].width - first.width,
      row[i].length - first.length,
    ];
    return sizes.every((size) => Math.abs(size) < SAME);
  });
  if (!even || Math.abs(Math.hypot(out, lean) - 1) > SAME) return undefined;
  const [x, y] = first.placed.at;
  const turn = (-first.placed.along[0] * y + first.placed.along[1] * x) / radius;
  const ordered = row.toSorted((a, b) => (a.placed.row?.index ?? 0) - (b.placed.row?.index ?? 0));
  const from = Math.atan2(ordered[0].placed.at[1], ordered[0].placed.at[0]);
  const step = wrapped(Math.atan2(ordered[1].placed.at[1], ordered[1].placed.at[0]) - from);
  const closed = first.placed.row?.closed === true && row.length > 2;
  const last = ordered.reduce((angle, { placed: { at } }) => angle + wrapped(Math.atan2(at[1], at[0]) - angle), from);
  const [low, high] = step > 0 ? [from, last] : [last, from];
  return {
    stones: row,
    along: turn,
    line: ({ angle, stand }) => {
      const [[pw, pr], [dw, dr]] = [stand.point, stand.way];
      const on = low + ((((angle - low) % TURN) + TURN) % TURN);
      const aside = closed || on <= high ? 0 : Math.min(on - high, TURN + low - on);
      const [up, aw] = [pr - radius, pw - w];
      return {
        x: aside * radius,
        dx: 0,
        y: aw * out - up * lean,
        dy: dw * out - dr * lean,
        z: aw * lean + up * out,
        dz: dw * lean + dr * out,
      };
    },
  };
}

function wrapped(angle: number): number {
  return angle - TURN * Math.round(angle / TURN);
}

/** A stone by itself goes along its own length. */
function aloneLine(stone: StoneView): RowLine {
  return {
    stones: [stone],
    along: 1,
    line: (through) => stone.line(through),
  };
}
