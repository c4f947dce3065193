import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ParitySets } from "../../../src/base/math/parity.js";

describe("sets of unknowns that are alike or unlike", () => {
  it("answer what follows from what was stated", () => {
    const sets = new ParitySets(5);
    expect(sets.relate(3, 1, true)).toBe(true);
    expect(sets.relate(1, 4, true)).toBe(true);
    expect(sets.relate(3, 4, false)).toBe(true);
    expect(sets.relate(3, 4, true)).toBe(false);
    expect(sets.rootOf(4)).toEqual({ root: 1, differs: true });
    expect(sets.rootOf(3)).toEqual({ root: 1, differs: true });
    expect(sets.rootOf(0)).toEqual({ root: 0, differs: false });
    expect(sets.relate(2, 2, true)).toBe(false);
  });

  it("agree with values from which the statements were taken", () => {
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 2, maxLength: 12 }),
        fc.array(fc.tuple(fc.nat(), fc.nat()), { maxLength: 30 }),
        (values, pairs) => {
          const sets = new ParitySets(values.length);
          for (const [i, j] of pairs) {
            const [a, b] = [i % values.length, j % values.length];
            expect(sets.relate(a, b, values[a] !== values[b])).toBe(true);
          }
          values.forEach((value, a) => {
            const { root, differs } = sets.rootOf(a);
            expect(root).toBeLessThanOrEqual(a);
            expect(values[root] !== value).toBe(differs);
          });
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });
});
