/**
 * A stone where it was placed, before all stones are numbered.
 */
import type { Stone } from "../gems/stone.js";
import type { RowPlace } from "./placed-stone.js";
import type { Spot } from "./spot.js";

export interface DraftStone {
  readonly spot: Spot;
  /** Radians from the spot's way, counter-clockwise from outside. */
  readonly turn: number;
  readonly stone: Stone;
  readonly row: RowPlace | undefined;
}
