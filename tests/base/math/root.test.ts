import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { narrowRoot } from "../../../src/base/math/root.js";

const SEED = 20261125;

function solve(f: (x: number) => number, a: number, b: number, step: number) {
  let calls = 0;
  const [low, high] = narrowRoot(
    (x) => {
      calls++;
      return f(x);
    },
    { x: a, y: f(a) },
    { x: b, y: f(b) },
    step,
  );
  return { low, high, calls };
}

describe("narrowing a root", () => {
  it("brackets it to the step, in hardly more steps than bisection", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.constantFrom<(d: number) => number>(
          (d) => d,
          (d) => d ** 3,
          (d) => Math.expm1(20 * d),
          (d) => Math.sign(d) * Math.sqrt(Math.abs(d)),
          (d) => (d < 0 ? -1 : 2),
        ),
        (root, shape) => {
          const { low, high, calls } = solve((x) => shape(x - root), 0, 1, 1e-9);
          expect(high.x - low.x).toBeLessThanOrEqual(1e-9);
          expect(low.x).toBeLessThanOrEqual(root);
          expect(high.x).toBeGreaterThanOrEqual(root);
          // 30 halvings, one step of slack, one for rounding.
          expect(calls).toBeLessThanOrEqual(32);
        },
      ),
      { seed: SEED },
    );
  });

  it("takes few steps where the function is smooth", () => {
    // √10 and the fixed point of the cosine, 0.739 085 133 2…
    const square = solve((x) => x * x - 10, 1, 7, 1e-9);
    expect(square.high.x).toBeCloseTo(Math.sqrt(10), 8);
    expect(square.calls).toBeLessThan(12);
    const cosine = solve((x) => x - Math.cos(x), 0, 1, 1e-9);
    expect(cosine.high.x).toBeCloseTo(0.7390851332, 8);
    expect(cosine.calls).toBeLessThan(12);
  });

  it("stops at an exact root", () => {
    expect(solve((x) => x - 0.5, 0, 1, 1e-9)).toMatchObject({
      low: { x: 0.5, y: 0 },
      high: { x: 0.5, y: 0 },
      calls: 1,
    });
    expect(solve((x) => x - 1, 0, 1, 1e-9)).toMatchObject({ low: { x: 1 }, high: { x: 1 }, calls: 0 });
  });
});
