import { describe, expect, it } from "vitest";
import { GrowingPoints, GrowingTriangles } from "../../src/mesh/growing.js";

describe("rows that grow", () => {
  it("hold what was put in, however much", () => {
    const points = new GrowingPoints();
    const triangles = new GrowingTriangles();
    for (let i = 0; i < 5000; i++) {
      points.push(i, -i, i / 2);
      triangles.push(3 * i, 3 * i + 1, 3 * i + 2);
    }
    expect([points.count, triangles.count]).toEqual([5000, 5000]);
    expect(points.take()).toEqual(
      Float64Array.from({ length: 15_000 }, (_, k) => [1, -1, 0.5][k % 3] * Math.floor(k / 3)),
    );
    expect(triangles.take()).toEqual(Uint32Array.from({ length: 15_000 }, (_, k) => k));
  });

  it("go on after points that were there, and leave those as they are", () => {
    const first = Float64Array.of(1, 2, 3);
    const points = new GrowingPoints(first);
    points.push(4, 5, 6);
    expect(points.at(4)).toBe(5);
    expect(points.take()).toEqual(Float64Array.of(1, 2, 3, 4, 5, 6));
    expect(first).toEqual(Float64Array.of(1, 2, 3));
  });
});
