import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sideOf } from "../../../src/base/math/side-of.js";
import { SEED } from "../../band/profile/specs.js";

const side = (...points: readonly (readonly number[])[]) => sideOf(Float64Array.from(points.flat()), 0, 1, 2, 3);

/** The sign by whole numbers of any length: each double is one, times a power of two that all share. */
function bySums(points: readonly (readonly number[])[]): number {
  const whole = (x: number) => BigInt(x * 2 ** 40);
  const [a, b, c, d] = points.map((point) => point.map(whole));
  const [u, v, w] = [a, b, c].map((point) => point.map((x, k) => x - d[k]));
  const det =
    u[0] * (v[1] * w[2] - v[2] * w[1]) + u[1] * (v[2] * w[0] - v[0] * w[2]) + u[2] * (v[0] * w[1] - v[1] * w[0]);
  return det > 0n ? -1 : det < 0n ? 1 : 0;
}

describe("the side of a plane", () => {
  it("is 1 where the triangle turns counter-clockwise seen from the point, −1 behind it, 0 in it", () => {
    const [a, b, c] = [
      [0, 0, 0],
      [1, 0, 0],
      [0, 1, 0],
    ];
    expect([side(a, b, c, [0, 0, 1]), side(a, b, c, [0, 0, -1]), side(a, b, c, [7, 8, 0])]).toEqual([1, -1, 0]);
  });

  it("is that of the coordinates as they are, of points a rounding beside a plane too", () => {
    // Multiples of 2⁻⁴⁰ up to 4, so that whole numbers hold them; many points are a few steps beside a plane.
    const coordinate = fc.integer({ min: -(2 ** 42), max: 2 ** 42 }).map((n) => n / 2 ** 40);
    const point = fc.tuple(coordinate, coordinate, coordinate);
    const step = fc.integer({ min: -2, max: 2 }).map((n) => n / 2 ** 40);
    const near = fc.tuple(point, point, point, fc.tuple(step, step, step)).map(([a, b, c, off]) => {
      return [a, b, c, a.map((x, k) => Math.round(((x + b[k] + c[k]) / 3) * 2 ** 40) / 2 ** 40 + off[k])];
    });
    fc.assert(
      fc.property(near, (points) => {
        expect(side(...points)).toBe(bySums(points));
      }),
      { seed: SEED, numRuns: 500 },
    );
  });
});
