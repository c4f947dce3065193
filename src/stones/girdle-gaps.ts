/**
 * How far girdles of neighbours are apart in space.
 */
import { convexDistance } from "../base/math/convex-distance.js";
import { PointGrid } from "../base/math/point-grid.js";
import type { Stone } from "../gems/stone.js";
import type { Frame } from "./frame.js";
import { girdleBody, StoneShapes } from "./stone-shape.js";

/** A stone where it stands. */
export interface Standing extends Frame {
  readonly stone: Stone;
}

export interface GirdleGap<Item> {
  readonly a: Item;
  readonly b: Item;
  /** mm; 0 where they touch or stand in each other. */
  readonly gap: number;
}

/** The gaps between girdles that may be up to so many mm apart. */
export function girdleGaps<Item extends Standing>(stones: readonly Item[], within: number): GirdleGap<Item>[] {
  if (stones.length === 0) return [];
  const shapes = new StoneShapes();
  const bodies = stones.map((stone) => girdleBody(shapes.of(stone.stone), stone));
  const reachOf = ({ stone: { length, width } }: Item) => Math.hypot(length, width) / 2;
  const grid = new PointGrid<number>(2 * Math.max(...stones.map(reachOf)) + within);
  return stones.flatMap((b, j) => {
    const near = grid.near(b.at).filter((i) => {
      const { at } = stones[i];
      const apart = Math.hypot(at[0] - b.at[0], at[1] - b.at[1], at[2] - b.at[2]);
      return apart < reachOf(stones[i]) + reachOf(b) + within;
    });
    grid.add(b.at, j);
    return near.map((i) => ({ a: stones[i], b, gap: convexDistance(bodies[i], bodies[j]).distance }));
  });
}
