import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Affine,
  compose,
  determinant,
  mapPoint,
  mapSubpath,
  rotation,
  scaling,
  stretches,
  translation,
} from "../../../src/base/math/affine.js";
import { segmentEnd } from "../../../src/base/math/curve.js";
import { ellipsePointAt } from "../../../src/base/math/elliptic-arc.js";
import { flattenSubpath, type PathSegment, readPathData } from "../../../src/base/math/path-data.js";
import type { Point2 } from "../../../src/base/math/point.js";

const SEED = 20261125;

const number = fc.integer({ min: -300, max: 300 }).map((n) => n / 100);
const affine: fc.Arbitrary<Affine> = fc
  .tuple(number, number, number, number, number, number)
  .filter((map) => Math.abs(determinant(map)) > 0.05);

describe("affine maps", () => {
  it("compose with the last applied first", () => {
    const map = compose(translation(10, 0), rotation(Math.PI / 2), scaling(2, 1));
    const [x, y] = mapPoint(map, [1, 0]);
    expect([x, y]).toEqual([expect.closeTo(10, 12), expect.closeTo(2, 12)]);
  });

  it("stretch no length more than the larger factor, none less than the smaller, and areas by both", () => {
    fc.assert(
      fc.property(affine, number, (map, angle) => {
        const [large, small] = stretches(map);
        const linear: Affine = [map[0], map[1], map[2], map[3], 0, 0];
        const length = Math.hypot(...mapPoint(linear, [Math.cos(angle), Math.sin(angle)]));
        expect(length).toBeLessThan(large * (1 + 1e-9));
        expect(length).toBeGreaterThan(small * (1 - 1e-9));
        expect(large * small).toBeCloseTo(Math.abs(determinant(map)), 9);
      }),
      { seed: SEED },
    );
  });

  it("map every kind of curve so that its points are the mapped points", () => {
    const [subpath] = readPathData("M 0 0 L 1 0.5 C 2 0 3 2 2 2 A 1 1 0 0 1 1 3 A 2 0.7 30 1 0 -1 1 Q -2 0 0 0 Z");
    fc.assert(
      fc.property(affine, (map) => {
        const mapped = mapSubpath(map, subpath);
        mapped.segments.forEach((segment, i) => {
          for (const t of [0, 0.25, 0.5, 1]) {
            const [x, y] = pointOf(segment, t);
            const [ex, ey] = mapPoint(map, pointOf(subpath.segments[i], t));
            expect(Math.hypot(x - ex, y - ey)).toBeLessThan(1e-8);
          }
        });
      }),
      { seed: SEED },
    );
  });

  it("leave a flattened curve within its tolerance of the mapped curve", () => {
    const [subpath] = readPathData("M 1 0 A 1 1 0 0 1 -1 0");
    const map: Affine = [3, 0.4, -0.2, 0.5, 7, 8];
    const back = inverse(map);
    for (const point of flattenSubpath(mapSubpath(map, subpath), 1e-3)) {
      expect(Math.hypot(...mapPoint(back, point))).toBeCloseTo(1, 9);
    }
  });
});

/** The point at a share of a segment's own parameter, which an affine map keeps. */
function pointOf(segment: PathSegment, t: number): Point2 {
  switch (segment.kind) {
    case "line":
      return [0, 1].map((i) => segment.from[i] + t * (segment.to[i] - segment.from[i])) as unknown as Point2;
    case "cubic": {
      const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3];
      return [0, 1].map((i) =>
        segment.points.reduce((sum, point, k) => sum + weights[k] * point[i], 0),
      ) as unknown as Point2;
    }
    case "arc":
      return segmentEnd({ ...segment, sweep: segment.sweep * t });
    case "ellipse":
      return ellipsePointAt(segment, segment.start + segment.sweep * t);
  }
}

function inverse([a, b, c, d, e, f]: Affine): Affine {
  const det = a * d - b * c;
  return compose([d / det, -b / det, -c / det, a / det, 0, 0], translation(-e, -f));
}
