import { expect, it } from "vitest";
import { metalFromWax } from "../../../src/measure/alloys/wax-to-metal.js";

it("gives the published worked weights", () => {
  // riogrande.com: 5 g of wax and 10 % for the sprue, in 14 K yellow: 71.885, published rounded up as 71.89.
  expect(Math.abs(metalFromWax(5 * 1.1, 13.07, 1) - 71.89)).toBeLessThan(0.0051);
  // 5.5 g of wax in silver of 10.5.
  expect(metalFromWax(5.5, 10.5, 1)).toBeCloseTo(57.75, 10);
});

it("reckons with the wax's own density", () => {
  expect(metalFromWax(0.95, 10, 0.95)).toBeCloseTo(10, 12);
});

it.each([
  [-1, 10, 1, "wax-mass", "waxMass"],
  [1, 0, 1, "wax-density", "metalDensity"],
  [1, 10, Number.NaN, "wax-density", "waxDensity"],
])("refuses %s g, %s and %s g/cm³", (wax, metal, density, code, path) => {
  expect(() => metalFromWax(wax, metal, density)).toThrow(expect.objectContaining({ code, path }));
});
