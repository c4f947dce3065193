/**
 * Where the stones of the ring lie on the strip, and which of them lies at a place of it.
 */
import type { StoneBodyInView, StoneInView, StonesInView } from "../../index.js";
import type { FlatPoint } from "./flat-view.js";
import { isInside } from "./region-at.js";
import { placeOfAngle, type StripLayout } from "./strip-layout.js";

/** A stone on the strip; one that goes over an end of it lies at both. */
export interface StoneSpot {
  readonly stone: StoneInView;
  /** mm along the strip from the own tile's left border, and across it from the seat's middle. */
  readonly u: number;
  readonly v: number;
  /** Farthest of its girdle from its middle, mm. */
  readonly reach: number;
}

/** What of a layout stones are laid out by. */
export type SpotLayout = Pick<StripLayout, "start" | "around" | "from" | "to">;

/** Most stones that are drawn, in the order of their numbers. Chosen: each is an element of the page. */
export const MOST_SPOTS = 800;

export function stoneSpots(layout: SpotLayout, { bodies, stones }: Pick<StonesInView, "stones"> & Bodies): StoneSpot[] {
  const { from, to, around } = layout;
  return stones.slice(0, MOST_SPOTS).flatMap((stone) => {
    const { angle, v } = stone.flat;
    const reach = reachOf(bodies[stone.body]);
    const u = placeOfAngle(layout, angle);
    const again = [u - around, u + around].filter((other) => other > from - reach && other < to + reach);
    return [u, ...again].map((place): StoneSpot => ({ stone, u: place, v, reach }));
  });
}

/** How many of the ring's stones are not drawn. */
export function undrawnStones({ stones }: Pick<StonesInView, "stones">): number {
  return Math.max(0, stones.length - MOST_SPOTS);
}

interface Bodies {
  readonly bodies: readonly Pick<StoneBodyInView, "outline">[];
}

function reachOf({ outline }: Pick<StoneBodyInView, "outline">): number {
  return outline.reduce((far, [x, y]) => Math.max(far, Math.hypot(x, y)), 0);
}

/** The stone whose girdle goes round a place of the strip; the topmost of several. */
export function stoneAt(spots: readonly StoneSpot[], { bodies }: Bodies, [u, v]: FlatPoint): StoneInView | undefined {
  return spots.findLast(({ stone, ...spot }) => {
    const turn = (stone.flat.turn * Math.PI) / 180;
    const [x, y] = [u - spot.u, v - spot.v];
    const own: FlatPoint = [x * Math.cos(turn) + y * Math.sin(turn), y * Math.cos(turn) - x * Math.sin(turn)];
    return isInside(own, [bodies[stone.body].outline]);
  })?.stone;
}

/** Room behind a stone, mm. Chosen. */
const BEHIND = 1;

/** Where the strip ends with the stones that stand behind its end: a band need not carry its pattern all round. */
export function endWithStones({ to }: Pick<StripLayout, "to">, spots: readonly StoneSpot[]): number {
  return spots.reduce((end, { u, reach }) => (u > to ? Math.max(end, u + reach + BEHIND) : end), to);
}
