/**
 * One stone at an angle.
 */
import { radians } from "../base/units.js";
import type { StonePlaceOf } from "../design/stones/stone-place.js";
import type { Stone } from "../gems/stone.js";
import type { DraftStone } from "./draft-stone.js";
import type { Ground } from "./ground.js";
import { requireOnSeat } from "./place-row.js";
import { seatSpot } from "./spot.js";

/**
 * @param where the place's own place in the document
 * @throws AnnuletError `stone-off-seat`
 */
export function placeSingle(
  { angle, v, turn }: StonePlaceOf<"single">,
  stone: Stone,
  ground: Ground,
  where: string,
): DraftStone {
  requireOnSeat(v, ground, `${where}.v`);
  const spot = seatSpot(ground.wrap, ground.wrap.uAt(radians(angle)), v);
  return { spot, turn: radians(turn), stone, row: undefined };
}
