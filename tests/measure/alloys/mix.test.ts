import fc from "fast-check";
import { expect, it } from "vitest";
import { mixDensity } from "../../../src/measure/alloys/mix.js";

const SEED = 20261125;

it("gives the published worked mixture: Au 583, Ag 104, Cu 313 → 13.33", () => {
  const mixed = mixDensity([
    { density: 19.32, share: 0.583 },
    { density: 10.49, share: 0.104 },
    { density: 8.96, share: 0.313 },
  ]);
  expect(mixed).toBeCloseTo(13.33, 2);
});

it("lies between its parts, does not mind their order, and one part alone is itself", () => {
  const density = fc.double({ min: 0.5, max: 23, noNaN: true });
  fc.assert(
    fc.property(density, density, fc.double({ min: 0, max: 1, noNaN: true }), (a, b, share) => {
      const parts = [
        { density: a, share },
        { density: b, share: 1 - share },
      ];
      const mixed = mixDensity(parts);
      expect(mixed).toBeGreaterThanOrEqual(Math.min(a, b) - 1e-9);
      expect(mixed).toBeLessThanOrEqual(Math.max(a, b) + 1e-9);
      expect(mixDensity([...parts].reverse())).toBeCloseTo(mixed, 9);
      expect(mixDensity([{ density: a, share: 1 }])).toBeCloseTo(a, 12);
    }),
    { seed: SEED },
  );
});

it.each([
  [[], "mix-shares"],
  [[{ density: 10, share: 0.99 }], "mix-shares"],
  [[{ density: 10, share: 925 }], "mix-shares"],
  [[{ density: 10, share: Number.NaN }], "mix-shares"],
  [
    [
      { density: 10, share: 1.5 },
      { density: 9, share: -0.5 },
    ],
    "mix-shares",
  ],
  [[{ density: 0, share: 1 }], "mix-density"],
  [[{ density: Number.NaN, share: 1 }], "mix-density"],
])("refuses %j", (parts, code) => {
  expect(() => mixDensity(parts)).toThrow(expect.objectContaining({ code }));
});

it("lets pass what rounding does to the shares", () => {
  expect(mixDensity([{ density: 10, share: 1 + 9e-7 }])).toBeCloseTo(10, 4);
});
