import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { polygonArea } from "../../src/base/math/polygon.js";
import { fillTriangle } from "../../src/mesh/fill-triangle.js";

describe("a triangle with points on its sides", () => {
  it.each([
    [0, 0, 0],
    [3, 0, 0],
    [0, 2, 5],
    [4, 1, 2],
  ])("%i, %i and %i of them is covered by triangles that use every point and have an area", (...counts) => {
    const corners: Point2[] = [
      [0, 0],
      [12, 0],
      [0, 12],
    ];
    const points = [...corners];
    const sides = counts.map((count, k) =>
      Array.from({ length: count }, (_, i) => {
        const [[ax, ay], [bx, by]] = [corners[k], corners[(k + 1) % 3]];
        const share = (i + 1) / (count + 1);
        return points.push([ax + share * (bx - ax), ay + share * (by - ay)]) - 1;
      }),
    );
    const triangles = fillTriangle([0, 1, 2], sides);
    const areas = Array.from({ length: triangles.length / 3 }, (_, t) =>
      polygonArea(triangles.slice(3 * t, 3 * t + 3).map((i) => points[i])),
    );
    expect(Math.min(...areas)).toBeGreaterThan(0);
    expect(areas.reduce((sum, area) => sum + area, 0)).toBeCloseTo(72, 9);
    expect(new Set(triangles).size).toBe(points.length);
    expect(areas.length).toBe(points.length - 2);
  });
});
