import fc from "fast-check";
import { expect, it } from "vitest";
import { weigh } from "../../../src/output/picture/weigh.js";
import { SEED } from "../../flat/strips.js";

const share = fc.integer({ min: 1, max: 20 });
const corner = fc.tuple(
  fc.integer({ min: -50, max: 50 }),
  fc.integer({ min: -50, max: 50 }),
  fc.integer({ min: 10, max: 90 }),
);

/** A corner in space as it is seen by an eye at the origin: x, y on the screen and one over its depth. */
const seen = ([x, y, depth]: readonly number[]) => [x / depth, y / depth, 1 / depth];

function weights(corners: readonly (readonly number[])[], [x, y]: readonly number[]): number[] {
  const out = new Float64Array(3);
  weigh(Uint32Array.from([0, 1, 2]), Float64Array.from(corners.flat()), 0, x, y, out);
  return [...out];
}

it("gives back the shares of a point of the triangle from where it is seen, whichever way the triangle faces", () => {
  fc.assert(
    fc.property(fc.tuple(corner, corner, corner), fc.tuple(share, share, share), (corners, parts) => {
      const sum = parts[0] + parts[1] + parts[2];
      const shares = parts.map((part) => part / sum);
      const [a, b, c] = corners.map(seen);
      const area = Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
      fc.pre(area > 1e-2);
      const point = [0, 1, 2].map((k) => corners.reduce((total, at, i) => total + shares[i] * at[k], 0));
      weights(corners.map(seen), seen(point)).forEach((weight, i) => {
        expect(weight).toBeCloseTo(shares[i], 8);
      });
    }),
    { seed: SEED },
  );
});

it("draws a sample beside the triangle to its nearest side: no share is negative, and all are one whole", () => {
  const flat = [
    [0, 0, 1],
    [4, 0, 1],
    [0, 4, 1],
  ];
  const beside = weights(flat, [2, -0.1]);
  expect(beside[2]).toBe(0);
  expect(beside[0] + beside[1]).toBeCloseTo(1, 12);
  expect(weights(flat, [-1, -1])).toEqual([1, 0, 0]);
});

it("shares alike where a triangle is seen edge on", () => {
  expect(
    weights(
      [
        [0, 0, 1],
        [0, 0, 1],
        [0, 0, 1],
      ],
      [0, 0],
    ),
  ).toEqual([1 / 3, 1 / 3, 1 / 3]);
});
