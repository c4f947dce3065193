import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roundCurve } from "../../../src/base/math/round-curve.js";
import { TURN } from "../../../src/base/units.js";

describe("a curve round the finger", () => {
  it("through two places opposite each other is the smooth step, there and back", () => {
    const curve = roundCurve([
      { angle: 0, value: 8 },
      { angle: Math.PI, value: 4 },
    ]);
    for (let i = 0; i <= 20; i++) {
      const t = i / 20;
      const value = 8 - 4 * t * t * (3 - 2 * t);
      expect(curve(Math.PI * t)).toBeCloseTo(value, 12);
      expect(curve(-Math.PI * t)).toBeCloseTo(value, 12);
    }
  });

  it("goes through its places, is smooth, and never leaves the range of the two places about it", () => {
    const places = fc.uniqueArray(
      fc.record({
        degree: fc.integer({ min: 0, max: 35 }).map((ten) => 10 * ten),
        value: fc.integer({ min: 1, max: 9 }),
      }),
      {
        minLength: 2,
        maxLength: 8,
        selector: ({ degree }) => degree,
      },
    );
    fc.assert(
      fc.property(places, (given) => {
        const knots = given
          .map(({ degree, value }) => ({ angle: (degree * TURN) / 360, value }))
          .sort((a, b) => a.angle - b.angle);
        const curve = roundCurve(given.map(({ degree, value }) => ({ angle: (degree * TURN) / 360, value })));
        knots.forEach(({ angle, value }, i) => {
          expect(curve(angle)).toBeCloseTo(value, 9);
          const next = knots[(i + 1) % knots.length];
          const width = (next.angle - angle + TURN) % TURN || TURN;
          for (let k = 0; k <= 16; k++) {
            const at = curve(angle + (width * k) / 16);
            expect(at).toBeGreaterThan(Math.min(value, next.value) - 1e-9);
            expect(at).toBeLessThan(Math.max(value, next.value) + 1e-9);
          }
          const step = 1e-6;
          const [before, after] = [curve(angle) - curve(angle - step), curve(angle + step) - curve(angle)];
          expect(Math.abs(after - before) / step).toBeLessThan(0.1);
        });
      }),
      { seed: 20261128, numRuns: 200 },
    );
  });

  it("has at a place between unlike steps the slope of Fritsch and Butland, (d0 d1) / (α d1 + (1 − α) d0)", () => {
    // h0 = 1, d0 = 1, h1 = 2, d1 = ½: α = (1 + h1 / (h0 + h1)) / 3 = 5/9, so that the slope is ½ / (5/18 + 4/9) = 9/13.
    const curve = roundCurve([
      { angle: 0.5, value: 1 },
      { angle: 1.5, value: 2 },
      { angle: 3.5, value: 3 },
    ]);
    const step = 1e-5;
    // The curvature jumps there, so that the difference is off by as much as the step.
    expect((curve(1.5 + step) - curve(1.5 - step)) / (2 * step)).toBeCloseTo(9 / 13, 4);
  });

  it("is level through one place, or through equal ones, to the last bit", () => {
    expect(roundCurve([{ angle: 1, value: 0.1 }])(2)).toBe(0.1);
    const level = roundCurve([0, 1, 2.5].map((angle) => ({ angle, value: 0.3 })));
    for (const angle of [-1, 0.7, 5, 12]) expect(level(angle)).toBe(0.3);
  });
});
