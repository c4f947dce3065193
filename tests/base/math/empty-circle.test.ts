// Covers: src/base/math/exchange.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearance, growCircle } from "../../../src/base/math/empty-circle.js";
import { findSummit } from "../../../src/base/math/exchange.js";

describe("growCircle", () => {
  it("finds the circle in a triangle, twice its area over its perimeter, wherever it begins", () => {
    const corner = fc.tuple(
      fc.double({ min: -10, max: 10, noNaN: true }),
      fc.double({ min: -10, max: 10, noNaN: true }),
    );
    const shares = fc.tuple(
      fc.double({ min: 0.05, max: 1, noNaN: true }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
    );
    fc.assert(
      fc.property(corner, corner, corner, shares, (a, b, c, [s, t]) => {
        const twice = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
        const round = [a, b, c].reduce(
          (sum, p, i, all) => sum + Math.hypot(p[0] - all[(i + 1) % 3][0], p[1] - all[(i + 1) % 3][1]),
          0,
        );
        fc.pre(twice > 0.5);
        const start = [0, 1].map((k) => (a[k] + s * b[k] + t * c[k]) / (1 + s + t)) as [number, number];
        const segments = new Float64Array([...a, ...b, ...b, ...c, ...c, ...a]);
        const { centre, radius } = growCircle(segments, start, 0.1);
        expect(radius).toBeCloseTo(twice / round, 9);
        expect(clearance(segments, centre)).toBe(radius);
      }),
      { seed: 20261127, numRuns: 300 },
    );
  });

  it("goes round points: the circle through three of them", () => {
    const points = [0.2, 2.1, 4.4].map((angle) => [3 + 5 * Math.cos(angle), -1 + 5 * Math.sin(angle)]);
    const segments = new Float64Array(points.flatMap((point) => [...point, ...point]));
    const { centre, radius } = growCircle(segments, [3.5, -1.5], 0.5);
    expect(radius).toBeCloseTo(5, 9);
    expect(centre[0]).toBeCloseTo(3, 6);
    expect(centre[1]).toBeCloseTo(-1, 6);
  });
});

describe("findSummit", () => {
  it("is where a search by halves finds it, in any bundle of planes", () => {
    const plane = fc.record({
      height: fc.double({ min: 0, max: 1, noNaN: true }),
      angle: fc.double({ min: 0, max: 6.28, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(plane, { minLength: 1, maxLength: 30 }), (list) => {
        const planes = list.map(({ height, angle }) => ({
          height,
          slope: [Math.cos(angle), Math.sin(angle)] as const,
        }));
        const lowest = Math.min(...list.map(({ height }) => height));
        const walls = [0, 1, 2].map((i) => ({
          height: lowest + 0.5,
          slope: [Math.cos((2 * Math.PI * i) / 3), Math.sin((2 * Math.PI * i) / 3)] as const,
        }));
        const heightAt = (x: number, y: number) =>
          Math.min(...[...planes, ...walls].map(({ height, slope }) => height + slope[0] * x + slope[1] * y));
        // The least of planes is concave, so that halving finds its summit in x of its summits in y.
        const summitOf = (f: (t: number) => number) => {
          let [low, high] = [-2, 2];
          for (let i = 0; i < 100; i++) {
            const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
            if (f(a) < f(b)) low = a;
            else high = b;
          }
          return f((low + high) / 2);
        };
        const found = findSummit(planes, 0.5);
        expect(found.height).toBeCloseTo(
          summitOf((x) => summitOf((y) => heightAt(x, y))),
          6,
        );
        expect(heightAt(...found.at)).toBeCloseTo(found.height, 9);
      }),
      { seed: 20261127, numRuns: 100 },
    );
  });
});
