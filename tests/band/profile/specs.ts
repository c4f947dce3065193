/** Random and named cross-sections for the profile's tests. */

import fc from "fast-check";
import { type ProfileSpec, profileSchema } from "../../../src/design/profile/profile.js";

/** The seed of every property test. */
export const SEED = 20261125;

export function spec(input: unknown): ProfileSpec {
  return profileSchema.parse(input);
}

const mm = (low: number, high: number) =>
  fc.integer({ min: Math.round(low * 1000), max: Math.round(high * 1000) }).map((n) => n / 1000);

const bore = fc.oneof(
  fc.record({ form: fc.constant("flat"), edge: mm(0, 0.5) }),
  fc.record({ form: fc.constant("comfort"), rise: mm(0, 0.6), edge: mm(0, 0.5) }),
);

const outside = fc.oneof(
  fc.record({ form: fc.constant("flat"), edge: mm(0, 0.6) }),
  fc.record({ form: fc.constant("domed"), rise: mm(0, 1.2), edge: mm(0, 0.6) }),
  fc.record({
    form: fc.constant("channel"),
    rail: mm(0.3, 1.5),
    depth: mm(0.1, 1.2),
    crown: mm(0, 0.4),
    edge: mm(0, 0.4),
    root: mm(0, 0.3),
  }),
  fc.record({ form: fc.constant("bevelled"), bevel: mm(0.2, 1.5), drop: mm(0, 1), edge: mm(0, 0.4) }),
  fc.record({ form: fc.constant("concave"), dip: mm(0, 1), edge: mm(0, 0.6) }),
  fc.record({ form: fc.constant("knife"), rise: mm(0, 1), ridge: mm(0, 3), edge: mm(0, 0.5) }),
);

const named = fc.record({ width: mm(2, 12), thickness: mm(1, 3), bore, outside });

const drawn = fc
  .record({ width: mm(2, 12), thickness: mm(1, 3), bore, side: mm(0.7, 1), lean: mm(-0.3, 0.3), edge: mm(0, 0.3) })
  .map(({ width, thickness, bore, side, lean, edge }) => {
    const half = width / 2;
    const start = `M ${-half} ${side * thickness}`;
    const curve = `C ${-half * 0.6} ${thickness * (4 - 2 * side) * 0.5} ${half * (0.6 + lean)} ${side * thickness} ${half} ${side * thickness}`;
    return { width, thickness, bore, outside: { form: "free", path: `${start} ${curve}`, edge } };
  });

/** Random specs, of which some cannot be built. */
export const anySpec = fc.oneof({ arbitrary: named, weight: 6 }, { arbitrary: drawn, weight: 1 });

/** Random sizes of the bore. */
export const boreRadius = mm(6, 12);

export { failureOf } from "../../support/failure-of.js";
