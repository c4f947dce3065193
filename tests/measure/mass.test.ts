import fc from "fast-check";
import { expect, it } from "vitest";
import { alloys, findAlloy } from "../../src/measure/alloys/catalogue.js";
import { massOf, toPennyweights, toTroyOunces } from "../../src/measure/mass.js";

const SEED = 20261125;

it("weighs a flat band by Pappus", () => {
  // D 16.51, t 1.8, w 6: V = π (D + t) w t = 621.2437 mm³; sterling silver 10.36 g/cm³.
  expect(massOf(Math.PI * (16.51 + 1.8) * 6 * 1.8, findAlloy("ag925"))).toBeCloseTo(0.6212437 * 10.36, 5);
});

it("gives a cubic centimetre the density as its mass, and scales with the volume", () => {
  fc.assert(
    fc.property(fc.constantFrom(...alloys), fc.double({ min: 0, max: 1e5, noNaN: true }), (alloy, volume) => {
      expect(massOf(1000, alloy)).toBe(alloy.density);
      expect(massOf(2 * volume, alloy)).toBeCloseTo(2 * massOf(volume, alloy), 6);
    }),
    { seed: SEED },
  );
});

it("turns grams into the weights of the trade", () => {
  // Published, rounded: 1 dwt = 1.55518 g, 1 ozt = 31.1035 g. Exact: 1 ozt = 31.1034768 g = 20 dwt.
  expect(toPennyweights(1.55518)).toBeCloseTo(1, 5);
  expect(toTroyOunces(31.1035)).toBeCloseTo(1, 5);
  expect(toPennyweights(31.1034768)).toBeCloseTo(20, 12);
});

it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])("refuses a volume of %s", (volume) => {
  expect(() => massOf(volume, findAlloy("ag925"))).toThrow(expect.objectContaining({ code: "mass-volume" }));
});

it("refuses a density that is none", () => {
  expect(() => massOf(1, { density: 0 })).toThrow(expect.objectContaining({ code: "mass-density" }));
});
