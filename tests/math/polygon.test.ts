import fc from "fast-check";
import { expect, test } from "vitest";
import type { Point2 } from "../../src/math/point.js";
import { findCrossing, polygonArea } from "../../src/math/polygon.js";

const square: Point2[] = [
  [0, 0],
  [2, 0],
  [2, 2],
  [0, 2],
];

test("area is signed", () => {
  expect(polygonArea(square)).toBe(4);
  expect(polygonArea([...square].reverse())).toBe(-4);
});

test.each<[string, Point2[], Point2 | undefined]>([
  ["a square", square, undefined],
  [
    "a bow tie",
    [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ],
    [1, 1],
  ],
  [
    "a corner on an edge",
    [
      [0, 0],
      [4, 0],
      [4, 3],
      [2, 0],
      [0, 3],
    ],
    [2, 0],
  ],
  [
    "an edge gone back over",
    [
      [0, 0],
      [4, 0],
      [2, 0],
      [2, 3],
    ],
    [4, 0],
  ],
  [
    "a repeated point",
    [
      [0, 0],
      [2, 0],
      [2, 0],
      [2, 2],
    ],
    [2, 0],
  ],
])("%s", (_, points, place) => {
  expect(findCrossing(points)).toEqual(place);
});

test("the swept search finds what comparing all pairs finds", () => {
  const number = fc.integer({ min: -50, max: 50 }).map((n) => n / 7);
  let crossed = 0;
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.tuple(number, number), { minLength: 4, maxLength: 7, selector: String }),
      (points) => {
        const found = findCrossing(points) !== undefined;
        if (found) crossed++;
        expect(found).toBe(crossesByParameters(points));
      },
    ),
    { seed: 20261125, numRuns: 1000 },
  );
  expect(crossed).toBeGreaterThan(100);
});

/** Solves both parameters of every pair of edges that share no corner. Parallel edges are left to the cases above. */
function crossesByParameters(points: readonly Point2[]): boolean {
  const count = points.length;
  for (let i = 0; i < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      const [[ax, ay], [bx, by]] = [points[i], points[i + 1]];
      const [[cx, cy], [dx, dy]] = [points[j], points[(j + 1) % count]];
      const cross = (bx - ax) * (dy - cy) - (by - ay) * (dx - cx);
      fc.pre(Math.abs(cross) > 1e-9);
      const t = ((cx - ax) * (dy - cy) - (cy - ay) * (dx - cx)) / cross;
      const s = ((cx - ax) * (by - ay) - (cy - ay) * (bx - ax)) / cross;
      if (t >= -1e-12 && t <= 1 + 1e-12 && s >= -1e-12 && s <= 1 + 1e-12) return true;
    }
  }
  return false;
}
