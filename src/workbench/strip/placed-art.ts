/**
 * A drawing that is placed in its tile, as it is taken hold of: where it stands, how large it is and how it is turned. All in the
 * drawing's own unit, in which it is turned before it is stretched with its tile.
 */
import { isPart } from "./art-entries.js";
import type { ArtPoint } from "./tile-units.js";

/** A placed drawing. */
export interface PlacedArt {
  readonly at: ArtPoint;
  /** Factor on the fitted size, and degrees counter-clockwise. */
  readonly scale: number;
  readonly turn: number;
  /** Half of the box that it is fitted into, before scaling. */
  readonly half: ArtPoint;
}

/** What the document takes: `place`'s schema. */
export const PLACE_RANGES = { scale: [0.001, 1000], turn: [-360, 360] } as const;

/** A step of a key: of the scale a factor, of the turn degrees; in all and while Alt is held. Chosen. */
export const PLACE_STEPS = { scale: { coarse: 1.05, fine: 1.01 }, turn: { coarse: 5, fine: 1 } } as const;

/** Half of the box of what is drawn in its own size, of a tile: its own is not known here. Chosen. */
const UNKNOWN = 0.25;

/** @param tile its width and height in the drawing's unit */
export function placedArt(place: unknown, [width, height]: ArtPoint): PlacedArt {
  const given = isPart(place) ? place : {};
  const number = (value: unknown, otherwise: number): number => (Number.isFinite(value) ? Number(value) : otherwise);
  const pair = (value: unknown): ArtPoint | undefined =>
    Array.isArray(value) && value.length === 2 && value.every(Number.isFinite) ? [value[0], value[1]] : undefined;
  const box = given.fit === "drawn" ? [UNKNOWN * width, UNKNOWN * height] : (pair(given.fit) ?? [width, height]);
  return {
    at: pair(given.at) ?? [width / 2, 0],
    scale: number(given.scale, 1),
    turn: number(given.turn, 0),
    half: [box[0] / 2, box[1] / 2],
  };
}

const DEGREE = Math.PI / 180;

/** A place of the box, in halves of its sides from its middle, where it stands. */
function onBox({ at, scale, turn, half }: PlacedArt, [right, up]: ArtPoint): ArtPoint {
  const [x, y] = [right * half[0] * scale, up * half[1] * scale];
  const [cos, sin] = [Math.cos(turn * DEGREE), Math.sin(turn * DEGREE)];
  return [at[0] + x * cos - y * sin, at[1] + x * sin + y * cos];
}

/** Where its size and its turn are taken hold of: at its right upper corner, and above the middle of its upper side. */
export function placeHandles(placed: PlacedArt): { readonly scale: ArtPoint; readonly turn: ArtPoint } {
  return { scale: onBox(placed, [1, 1]), turn: onBox(placed, [0, TURN_AT]) };
}

/** The turn's handle stands off the upper side by a part of the box. */
const TURN_AT = 1.3;

/** The box as path data. */
export function placeFrame(placed: PlacedArt): string {
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const text = (corner: ArtPoint): string =>
    onBox(placed, corner)
      .map((value) => Number(value.toFixed(6)))
      .join(" ");
  return `M ${corners.map(text).join(" L ")} Z M ${text([0, 1])} L ${text([0, TURN_AT])}`;
}

/** The scale at which its corner is as far away as a place, as it is written: at 1 it holds. */
export function scaleTo({ at, half }: PlacedArt, [x, y]: ArtPoint, holds: boolean): number {
  const HOLD = 0.03;
  const scale = Math.hypot(x - at[0], y - at[1]) / Math.max(Number.MIN_VALUE, Math.hypot(...half));
  return writtenScale(holds && Math.abs(scale - 1) < HOLD ? 1 : scale);
}

/** To a thousandth, within what the document takes. */
export function writtenScale(scale: number): number {
  const [least, most] = PLACE_RANGES.scale;
  return Math.min(most, Math.max(least, Number(scale.toFixed(3))));
}

/** The turn at which its upper side faces a place, as it is written: at each 15° it holds. */
export function turnTo({ at }: PlacedArt, [x, y]: ArtPoint, holds: boolean): number {
  const HOLD = { each: 15, within: 3 };
  const UP = 90;
  const turn = Math.atan2(y - at[1], x - at[0]) / DEGREE - UP;
  const near = HOLD.each * Math.round(turn / HOLD.each);
  return writtenTurn(holds && Math.abs(turn - near) < HOLD.within ? near : turn);
}

/** To a tenth of a degree, above −180 up to 180. */
export function writtenTurn(turn: number): number {
  const ROUND = 360;
  const within = turn - ROUND * Math.ceil(turn / ROUND - 1 / 2);
  return Number(within.toFixed(1)) + 0;
}

/** A place in its direction from another, at least so far away. */
export function awayFrom([u, v]: ArtPoint, [toU, toV]: ArtPoint, least: number): ArtPoint {
  const away = Math.hypot(toU - u, toV - v);
  if (away >= least) return [toU, toV];
  // Of nothing the direction is up.
  return away === 0 ? [u, v + least] : [u + ((toU - u) * least) / away, v + ((toV - v) * least) / away];
}
