import { expect, it } from "vitest";
import { largestWhere } from "../../../src/base/math/largest.js";

it("finds √2 as the largest number whose square is at most 2, to the last bit", () => {
  const found = largestWhere(0, 2, (x) => x * x <= 2);
  expect(found * found).toBeLessThanOrEqual(2);
  expect(found).toBeCloseTo(Math.SQRT2, 14);
});

it("takes the upper end where that holds, the lower where nothing above it does", () => {
  expect(largestWhere(1, 5, () => true)).toBe(5);
  expect(largestWhere(1, 5, () => false)).toBeCloseTo(1, 12);
  expect(largestWhere(1, 5, () => false)).toBe(1);
});

it("never gives a value that does not hold, and stops as near as is asked", () => {
  let asked = 0;
  const holds = (x: number) => {
    asked++;
    return x <= 0.7;
  };
  const found = largestWhere(0, 1, holds, 1e-3);
  expect(found).toBeLessThanOrEqual(0.7);
  expect(found).toBeGreaterThan(0.7 - 1e-3);
  // One question for the upper end and ten halvings: 2⁻¹⁰ is under a thousandth.
  expect(asked).toBe(11);
});

it("ends, even where no number is near enough", () => {
  expect(largestWhere(0, 1e300, (x) => x < 1e299, -1)).toBeGreaterThan(9e298);
});
