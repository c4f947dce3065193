import { expect, it } from "vitest";
import { crossesItself } from "../../src/flat/crosses-itself.js";
import type { GridPath } from "../../src/flat/grid.js";

const ring = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x: x * 1000, y: y * 1000 }));

it("a ring that goes round once does not, either way round", () => {
  const lShape = ring([0, 0], [10, 0], [10, 4], [4, 4], [4, 10], [0, 10]);
  expect(crossesItself(lShape)).toBe(false);
  expect(crossesItself(lShape.toReversed())).toBe(false);
});

it("a bow tie does, also where its two halves are as large as each other", () => {
  expect(crossesItself(ring([0, 0], [10, 10], [10, 0], [0, 10]))).toBe(true);
  expect(crossesItself(ring([0, 0], [10, 0], [0, 8], [6, 10]))).toBe(true);
});

it("a ring that covers some place twice does, though all of it turns one way", () => {
  const star = Array.from({ length: 5 }, (_, i): [number, number] => {
    const angle = (4 * Math.PI * i) / 5;
    return [10 * Math.cos(angle), 10 * Math.sin(angle)];
  });
  expect(crossesItself(ring(...star))).toBe(true);
  expect(crossesItself(ring([0, 0], [9, 0], [9, 9], [0, 9], [0, 0], [9, 0], [9, 9], [0, 9]))).toBe(true);
});

it("rings that only touch themselves do not", () => {
  expect(crossesItself(ring([0, 0], [4, 0], [2, 2], [4, 4], [0, 4], [2, 2]))).toBe(false);
});
