import fc from "fast-check";
import { expect, it } from "vitest";
import { greatestCommon } from "../../../src/base/math/greatest-common.js";

it("is the largest number that divides both, as trying all finds it", () => {
  const numbers = fc.integer({ min: 1, max: 300 });
  fc.assert(
    fc.property(numbers, numbers, (a, b) => {
      let largest = 1;
      for (let d = 1; d <= Math.min(a, b); d++) if (a % d === 0 && b % d === 0) largest = d;
      expect(greatestCommon(a, b)).toBe(largest);
    }),
  );
});

it("of a number and its multiple is the number, either way round", () => {
  expect([greatestCommon(6, 42), greatestCommon(42, 6), greatestCommon(7, 7), greatestCommon(1, 9)]).toEqual([
    6, 6, 7, 1,
  ]);
});
