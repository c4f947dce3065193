/**
 * What the placed stones of a ring come to: counts and weights, what to order, what to know of their gems, and how they are seen.
 */
import { stoneCautions } from "../output/stones/stone-cautions.js";
import { type StonesInView, stonesInView } from "../output/stones/stones-in-view.js";
import { type OrderRow, orderStones, type StoneOrder } from "../stones/order-stones.js";
import type { PlacedStones } from "../stones/place-stones.js";
import { reportStones, type StonesReport } from "../stones/stone-report.js";

/** The stones of a design. */
export interface StonePlan {
  /** Undefined where there are none. */
  readonly report: StonesReport | undefined;
  readonly orders: readonly OrderRow[];
  /** Whole sentences about the gems. */
  readonly cautions: readonly string[];
}

/** The stones of a ring: what they come to, and their bodies and places for views. Lengths in mm. */
export interface RingStones extends StonesInView {
  /** Undefined where there are none. */
  readonly report: StonesReport | undefined;
  /** What to order, with a twentieth as spares. */
  readonly orders: readonly StoneOrder[];
  /** Whole sentences about the gems. */
  readonly cautions: readonly string[];
}

export function planOf(stones: PlacedStones, spares?: number): StonePlan {
  return { report: reportStones(stones), orders: orderStones(stones, spares), cautions: stoneCautions(stones) };
}

export function ringStones(stones: PlacedStones): RingStones {
  const { report, orders, cautions } = planOf(stones);
  return {
    ...stonesInView(stones),
    report,
    orders: orders.map(({ stones: _, ...order }) => order),
    cautions,
  };
}
