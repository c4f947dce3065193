/** Lines for tests of weaves. */

import { walkLine } from "../../../src/flat/walk-line.js";
import { type Crossing, findCrossings, type Strand } from "../../../src/relief/weave/crossings.js";
import { orderCrossings, passesAlong } from "../../../src/relief/weave/order.js";
import { type StripInput, stripOf } from "../../flat/strips.js";

type Place = readonly [number, number];

/** A closed curve through many points of t from 0 to a turn. */
export function loopOf(at: (t: number) => Place, count = 720): Strand {
  const points = Array.from({ length: count }, (_, i) => at((2 * Math.PI * (i + 0.37)) / count));
  return { walk: walkLine({ points, kind: "loop" }), closed: true, width: 0.2, member: 0 };
}

export function lineOf(points: readonly Place[], member = 0): Strand {
  return { walk: walkLine({ points, kind: "open" }), closed: false, width: 0.2, member };
}

/** The trefoil knot's diagram of three crossings, about (3, 0). */
export const trefoil = loopOf((t) => [
  3 + 0.6 * (Math.sin(t) + 2 * Math.sin(2 * t)),
  0.6 * (Math.cos(t) - 2 * Math.cos(2 * t)),
]);

/** Crossings of strands and which of their passes goes over. */
export function woven(
  strands: readonly Strand[],
  { later = false, names = ["strand", "other"], ...input }: StripInput & { later?: boolean; names?: string[] } = {},
): { crossings: Crossing[]; order: readonly (0 | 1)[] } {
  const strip = stripOf(input);
  const crossings = findCrossings(strands, [-100, 100], "weave");
  const order = orderCrossings(strip, strands, crossings, { names, path: "weave", window: [-100, 100], later });
  return { crossings, order };
}

/** Over (true) and under along each strand. */
export function sequence(strands: readonly Strand[], { crossings, order }: ReturnType<typeof woven>): boolean[][] {
  return passesAlong(strands, crossings).map((list) => list.map(({ crossing, which }) => order[crossing] === which));
}

/**
 * The notation of C. H. Dowker (in Dowker and Thistlethwaite, "Classification of knot projections", 1983): passes are
 * numbered along the knot from 1; each crossing has an odd and an even number; the evens in the order of the odds.
 */
export function dowker(strand: Strand, crossings: readonly Crossing[]): number[] {
  const numbers = new Map<number, number[]>();
  passesAlong([strand], crossings)[0].forEach(({ crossing }, i) => {
    numbers.set(crossing, [...(numbers.get(crossing) ?? []), i + 1]);
  });
  return [...numbers.values()]
    .map((pair) => [pair.find((n) => n % 2 === 1) ?? 0, pair.find((n) => n % 2 === 0) ?? 0])
    .sort(([a], [b]) => a - b)
    .map(([, even]) => even);
}
