import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { after, before, distanceTo, planeCoordinates } from "../../../src/base/math/half-space.js";
import type { Point3 } from "../../../src/base/math/point.js";
import { polygonArea } from "../../../src/base/math/polygon.js";
import { SEED } from "../../band/profile/specs.js";

const number = fc.double({ min: -5, max: 5, noNaN: true });
const point = fc.tuple(number, number, number);
const normal = point
  .filter((p) => Math.hypot(...p) > 0.1)
  .map((p): Point3 => {
    const length = Math.hypot(...p);
    return [p[0] / length, p[1] / length, p[2] / length];
  });
const axes = fc.constantFrom<Point3>([1, 0, 0], [-1, 0, 0], [0, 1, 0], [0, -1, 0], [0, 0, 1], [0, 0, -1]);

describe("a half space", () => {
  it("has what lies against its normal inside", () => {
    const keep = { normal: [0.6, 0, 0.8] as const, offset: 2 };
    expect(distanceTo(keep, 0, 7, 0)).toBe(-2);
    expect(distanceTo(keep, 0.6 * 5, 7, 0.8 * 5)).toBeCloseTo(3, 14);
  });

  it("between two angles round the axis holds what stands there", () => {
    fc.assert(
      fc.property(
        number,
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        fc.double({ min: 0.02, max: 0.98, noNaN: true }),
        (from, wide, share) => {
          const at = (angle: number) => [7 * Math.cos(angle), 7 * Math.sin(angle), 1] as const;
          const isIn = (angle: number) =>
            distanceTo(after(from), ...at(angle)) <= 0 && distanceTo(before(from + wide), ...at(angle)) <= 0;
          expect(isIn(from + share * wide)).toBe(true);
          expect(isIn(from - share * wide)).toBe(false);
          expect(isIn(from + wide + share * wide)).toBe(false);
        },
      ),
      { seed: SEED },
    );
  });
});

describe("coordinates in a plane", () => {
  it("keep lengths along it, and turn as is seen from outside", () => {
    fc.assert(
      fc.property(fc.oneof(normal, axes), point, point, point, (n, a, b, c) => {
        const flat = planeCoordinates({ normal: n, offset: 0 });
        const way = [0, 1, 2].map((k) => b[k] - a[k]);
        const up = way.reduce((sum, step, k) => sum + step * n[k], 0);
        const [[ax, ay], [bx, by]] = [flat(...a), flat(...b)];
        expect((bx - ax) ** 2 + (by - ay) ** 2 + up ** 2).toBeCloseTo(Math.hypot(...way) ** 2, 9);
        // Twice a triangle's area, seen along the normal: n · ((b − a) × (c − a)).
        const [u, v] = [way, [0, 1, 2].map((k) => c[k] - a[k])];
        const seen =
          n[0] * (u[1] * v[2] - u[2] * v[1]) + n[1] * (u[2] * v[0] - u[0] * v[2]) + n[2] * (u[0] * v[1] - u[1] * v[0]);
        expect(2 * polygonArea([flat(...a), flat(...b), flat(...c)])).toBeCloseTo(seen, 9);
      }),
      { seed: SEED },
    );
  });
});
