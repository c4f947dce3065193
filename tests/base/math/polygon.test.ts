import fc from "fast-check";
import { expect, test } from "vitest";
import type { Point2 } from "../../../src/base/math/point.js";
import { encloses, findCrossing, polygonArea, polygonsOf } from "../../../src/base/math/polygon.js";
import { SEED } from "../../band/profile/specs.js";
import { exactTurn } from "./exact.js";

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

test("a polygon encloses what lies inside it", () => {
  const bay: Point2[] = [
    [0, 0],
    [4, 0],
    [4, 4],
    [2, 1],
    [0, 4],
  ];
  const inside: Point2[] = [
    [1, 1],
    [3, 1],
    [2, 0.5],
    [0.2, 3],
    [3.8, 3],
  ];
  const outside: Point2[] = [
    [2, 2],
    [2, 1.2],
    [-1, 1],
    [5, 1],
    [2, -0.1],
    [1, 5],
  ];
  for (const points of [bay, [...bay].reverse()]) {
    expect(inside.map((point) => encloses(points, point))).toEqual(inside.map(() => true));
    expect(outside.map((point) => encloses(points, point))).toEqual(outside.map(() => false));
  }
});

test("a triangle encloses the points whose three shares are positive", () => {
  const point = fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: -50, max: 50 }));
  fc.assert(
    fc.property(point, point, point, point, (a, b, c, p) => {
      const shares = [polygonArea([a, b, p]), polygonArea([b, c, p]), polygonArea([c, a, p])];
      fc.pre(shares.every((share) => share !== 0));
      expect(encloses([a, b, c], p)).toBe(new Set(shares.map(Math.sign)).size === 1);
    }),
    { seed: SEED },
  );
});

test("a polygon of no points has no area, and nothing inside", () => {
  expect(polygonArea([])).toBe(0);
  expect(encloses([], [0, 0])).toBe(false);
});

test("tells inside, border and outside of points of another kind", () => {
  const { area, side } = polygonsOf<{ u: number; v: number }>({ x: ({ u }) => u, y: ({ v }) => v });
  const frame = [
    { u: 0, v: 0 },
    { u: 4, v: 0 },
    { u: 4, v: 4 },
    { u: 2, v: 2 },
    { u: 0, v: 4 },
  ];
  const at = (u: number, v: number) => side(frame, { u, v });
  expect(area(frame)).toBe(12);
  expect([at(2, 1), at(0.5, 3), at(3.5, 3)]).toEqual([1, 1, 1]);
  expect([at(2, 3), at(5, 2), at(-1, 4), at(2, 4), at(5, 0), at(-1, 2)]).toEqual([-1, -1, -1, -1, -1, -1]);
  expect([at(0, 0), at(2, 0), at(3, 3), at(2, 2), at(0, 2), at(4, 4)]).toEqual([0, 0, 0, 0, 0, 0]);
});

test("points a rounding beside an edge lie on the side where they are, which plain arithmetic often misses", () => {
  // The even-odd rule by the place where an edge crosses the point's level, as it is found in many books.
  const plain = (polygon: readonly Point2[], [x, y]: Point2) => {
    let inside = false;
    polygon.forEach(([ax, ay], i) => {
      const [bx, by] = polygon[(i + 1) % polygon.length];
      if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
    });
    return inside;
  };
  const [a, b]: Point2[] = [
    [7.3, 0.1],
    [2.7, 19.9],
  ];
  let wrong = 0;
  for (let k = 1; k < 500; k++) {
    const t = k / 500;
    const point: Point2 = [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    const inside = exactTurn(a, b, point) > 0;
    const triangle: Point2[] = [a, b, [-1000, 10]];
    expect(encloses(triangle, point)).toBe(inside);
    if (plain(triangle, point) !== inside) wrong++;
  }
  expect(wrong).toBeGreaterThan(50);
});
