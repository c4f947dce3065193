/**
 * What to order: the stones of a ring by cut, gem and size, with spares.
 */
import { findCut } from "../gems/cuts/catalogue.js";
import type { CutName } from "../gems/stone.js";
import { groupedBy } from "./grouped-by.js";
import type { PlacedStones } from "./place-stones.js";
import type { PlacedStone } from "./placed-stone.js";
import { caratsOfStone, sizeKey, sizeOf } from "./stone-report.js";

/** Stones of one kind, as they are ordered. */
export interface StoneOrder {
  /** On the map, from 1. */
  readonly number: number;
  readonly cut: CutName;
  /** Name of the cut in tables. */
  readonly cutTitle: string;
  /** Symbol of the gem and its name in tables. */
  readonly gem: string;
  readonly gemName: string;
  /** mm, to a hundredth. */
  readonly length: number;
  readonly width: number;
  readonly count: number;
  /** Of all of them, without spares, by the published formula. */
  readonly carats: number;
  readonly spares: number;
  /** With spares. */
  readonly order: number;
}

/** The same with the stones themselves. */
export interface OrderRow extends StoneOrder {
  readonly stones: readonly PlacedStone[];
}

/** Spares over what is set, a share: small stones break and get lost. Common practice, no source. */
export const SPARE_SHARE = 0.05;

/** The rows by cut, gem, then size, the largest first; `share` of each is added as spares, rounded up. */
export function orderStones({ stones, gems }: PlacedStones, share: number = SPARE_SHARE): readonly OrderRow[] {
  const kinds = groupedBy(stones, ({ stone }) => `${stone.cut} ${stone.gem} ${sizeKey(stone)}`);
  const rows = [...kinds.values()].map((alike) => {
    const [{ stone }] = alike;
    const spares = Math.max(0, Math.ceil(share * alike.length - ROUNDING));
    return {
      cut: stone.cut,
      cutTitle: findCut(stone.cut).title,
      gem: stone.gem,
      gemName: gems.get(stone.gem)?.name ?? stone.gem,
      ...sizeOf(stone),
      count: alike.length,
      carats: alike.reduce((sum, one) => sum + caratsOfStone(one.stone, gems), 0),
      spares,
      order: alike.length + spares,
      stones: alike,
    };
  });
  const first = new Map(
    stones.map(({ stone: { cut, gem } }, i) => [`${cut} ${gem}`, i]).toReversed() as [string, number][],
  );
  const place = ({ cut, gem }: Pick<OrderRow, "cut" | "gem">) => first.get(`${cut} ${gem}`) ?? 0;
  return rows
    .toSorted((a, b) => place(a) - place(b) || b.length - a.length || b.width - a.width)
    .map((row, i): OrderRow => ({ number: i + 1, ...row }));
}

/** A share times a count is whole but for rounding, not a stone more. */
const ROUNDING = 1e-9;
