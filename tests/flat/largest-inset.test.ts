import { expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { largestInset } from "../../src/flat/largest-inset.js";
import { type GridRegion, offset } from "../../src/flat/polygons.js";

/** Grid steps in a millimetre. */
const SCALE = 1e5;

const path = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x: x * SCALE, y: y * SCALE }));
const largest = (region: GridRegion, most = 100) =>
  largestInset(region, most, SCALE, (mm) => offset(region, mm * SCALE, "miter", 10));

/** The largest inset of a region is the radius of the largest circle in it, here to the micrometre, rounded down. */
it("is half the smaller side of an oblong, and the inscribed circle's radius of a triangle: 3, 4 and 5 have 1", () => {
  for (const [region, radius] of [
    [[path([0, 0], [8, 0], [8, 3], [0, 3])], 1.5],
    [[path([0, 0], [3, 0], [0, 4])], 1],
  ] as const) {
    expect(largest(region)).toBeLessThanOrEqual(radius);
    expect(largest(region)).toBeGreaterThanOrEqual(radius - 2.1e-3);
  }
});

it("is the widest part's, whatever the others; a hole takes room away", () => {
  const outer = path([0, 0], [10, 0], [10, 10], [0, 10]);
  const hole = path([4, 4], [4, 6], [6, 6], [6, 4]);
  // Mitred, the hole stays a square, and the walls beside it are 4 mm wide all round.
  expect(largest([outer, hole])).toBeCloseTo(2, 2);
  expect(largest([path([0, 0], [1, 0], [1, 1], [0, 1]), path([5, 0], [9, 0], [9, 4], [5, 4])])).toBeCloseTo(2, 2);
});

it("leaves something: what it names can be made, and a little more cannot", () => {
  const region = [path([0, 0], [7, 1], [6, 5], [2, 6])];
  const found = largest(region);
  expect(offset(region, -found * SCALE, "miter", 10).length).toBeGreaterThan(0);
  expect(offset(region, -(found + 3e-3) * SCALE, "miter", 10)).toEqual([]);
});

it("is sought below the distance that failed alone", () => {
  expect(largest([path([0, 0], [8, 0], [8, 8], [0, 8])], 1)).toBe(1);
});
