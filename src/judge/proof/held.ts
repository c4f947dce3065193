/**
 * What a column holds as far as the flat art tells: surely, maybe, and most likely. Where an end of a body is known only to
 * lie between two places, one set ends at either, and the third half way.
 */
import { type Intervals, intersect, lessOne, unite, withOne } from "./intervals.js";

/** Three sets of intervals along a column, mm: `surely` within `likely` within `maybe`. */
export interface Held {
  readonly surely: Intervals;
  readonly likely: Intervals;
  readonly maybe: Intervals;
}

/** From where to where, mm. */
export type Stretch = readonly [from: number, to: number];

/** Of what is known for certain. */
export function heldFor(set: Intervals): Held {
  return { surely: set, likely: set, maybe: set };
}

/** With a body that surely fills one stretch and at most another. */
export function added(held: Held, [a, b]: Stretch, [c, d]: Stretch): Held {
  return {
    surely: withOne(held.surely, a, b),
    likely: withOne(held.likely, (a + c) / 2, (b + d) / 2),
    maybe: withOne(held.maybe, c, d),
  };
}

/** Without what surely fills one stretch and at most another. */
export function cutOut(held: Held, [a, b]: Stretch, [c, d]: Stretch): Held {
  return {
    surely: lessOne(held.surely, c, d),
    likely: lessOne(held.likely, (a + c) / 2, (b + d) / 2),
    maybe: lessOne(held.maybe, a, b),
  };
}

/** What two columns side by side hold together, wherever between them an edge lies. */
export function either(one: Held, other: Held): Held {
  return {
    surely: intersect(one.surely, other.surely),
    likely: one.likely,
    maybe: unite(one.maybe, other.maybe),
  };
}
