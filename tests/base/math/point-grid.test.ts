import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point3 } from "../../../src/base/math/point.js";
import { PointGrid } from "../../../src/base/math/point-grid.js";

const coordinate = fc.double({ min: -20, max: 20, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate);

describe("PointGrid", () => {
  it("finds everything within its reach, and nothing beyond two cells", () => {
    fc.assert(
      fc.property(
        fc.array(point, { maxLength: 60 }),
        point,
        fc.double({ min: 0.1, max: 8, noNaN: true }),
        (points, at, reach) => {
          const grid = new PointGrid<number>(reach);
          points.forEach((place, i) => {
            grid.add(place, i);
          });
          const distance = (p: Point3) => Math.hypot(p[0] - at[0], p[1] - at[1], p[2] - at[2]);
          const found = new Set(grid.near(at));
          points.forEach((place, i) => {
            if (distance(place) < reach) expect(found).toContain(i);
            if (found.has(i)) expect(distance(place)).toBeLessThan(2 * Math.sqrt(3) * reach);
          });
        },
      ),
      { seed: 20261125 },
    );
  });
});
