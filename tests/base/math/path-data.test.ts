// Covers: src/base/math/bezier.ts, src/base/math/curve.ts, src/base/math/elliptic-arc.ts
import fc from "fast-check";
import { svgPathProperties } from "svg-path-properties";
import { expect, test } from "vitest";
import { AnnuletError } from "../../../src/base/errors.js";
import { cubicPointAt } from "../../../src/base/math/bezier.js";
import { pointAt, segmentEnd, segmentLength, segmentStart } from "../../../src/base/math/curve.js";
import { ellipsePointAt } from "../../../src/base/math/elliptic-arc.js";
import { flattenPath, flattenPathSegment, type PathSegment, readPathData } from "../../../src/base/math/path-data.js";
import type { Point2 } from "../../../src/base/math/point.js";

const number = fc.integer({ min: -400, max: 400 }).map((n) => n / 100);
const radius = fc.integer({ min: 1, max: 500 }).map((n) => n / 100);
const flag = fc.constantFrom(0, 1);
const command = fc.oneof(
  fc.tuple(fc.constantFrom("L", "l"), number, number),
  // T only after Q and never to where it is: there the other reader draws a line, the standard a curve.
  fc.tuple(fc.constant("q"), radius, number, radius, number, fc.constantFrom("T", "t"), radius, number),
  fc.tuple(fc.constantFrom("H", "h", "V", "v"), number),
  fc.tuple(fc.constantFrom("C", "c"), number, number, number, number, number, number),
  fc.tuple(fc.constantFrom("S", "s", "Q", "q"), number, number, number, number),
  fc.tuple(fc.constantFrom("A", "a"), radius, radius, fc.integer({ min: -180, max: 180 }), flag, flag, number, number),
);
const pathText = fc
  .tuple(number, number, fc.array(command, { minLength: 1, maxLength: 8 }))
  .map(([x, y, commands]) => `M ${x} ${y} ${commands.map((part) => part.join(" ")).join(" ")}`);
const runs = { seed: 20261125, numRuns: 300 };

function length(points: readonly Point2[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++)
    sum += Math.hypot(points[i][0] - points[i - 1][0], points[i][1] - points[i - 1][1]);
  return sum;
}

function at(segment: PathSegment, t: number): Point2 {
  if (segment.kind === "cubic") return cubicPointAt(segment, t);
  if (segment.kind === "ellipse") return ellipsePointAt(segment, segment.start + segment.sweep * t);
  return pointAt(segment, segmentLength(segment) * t);
}

function distanceTo(points: readonly Point2[], [x, y]: Point2): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < points.length; i++) {
    const [ax, ay] = points[i - 1];
    const [dx, dy] = [points[i][0] - ax, points[i][1] - ay];
    const square = dx * dx + dy * dy;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
    nearest = Math.min(nearest, Math.hypot(ax + t * dx - x, ay + t * dy - y));
  }
  return nearest;
}

test("length and end of any path agree with svg-path-properties, an independent reader", () => {
  fc.assert(
    fc.property(pathText, (d) => {
      const other = new svgPathProperties(d);
      // Its closed formula for quadratics divides by 0 where the control point lies on the end.
      fc.pre(Number.isFinite(other.getTotalLength()));
      const flat = flattenPath(d, 1e-6);
      const sum = flat.reduce((total, { points }) => total + length(points), 0);
      // Its own integration of curves is good to about 1e-2 of the length.
      expect(Math.abs(sum - other.getTotalLength())).toBeLessThan(1e-3 + 1e-2 * sum);
    }),
    runs,
  );
});

test("no point of the true curve is further from the chords than the tolerance", () => {
  fc.assert(
    fc.property(pathText, fc.constantFrom(0.5, 0.05, 0.002), (d, tolerance) => {
      for (const { segments } of readPathData(d)) {
        for (const segment of segments) {
          const points = [at(segment, 0), ...flattenPathSegment(segment, tolerance)];
          for (let i = 0; i <= 97; i++)
            expect(distanceTo(points, at(segment, i / 97))).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
        }
      }
    }),
    runs,
  );
});

test("pieces join: each begins where the one before it ended", () => {
  fc.assert(
    fc.property(pathText, (d) => {
      for (const { start, segments } of readPathData(d)) {
        let end = start;
        for (const segment of segments) {
          const from = at(segment, 0);
          expect(Math.hypot(from[0] - end[0], from[1] - end[1])).toBeLessThan(1e-7);
          end = at(segment, 1);
        }
      }
    }),
    runs,
  );
});

test("two half circles are exact arcs about one centre", () => {
  const [circle] = readPathData("M -1.1 0 A 1.1 1.1 0 0 1 1.1 0 A 1.1 1.1 0 0 1 -1.1 0 Z");
  expect(circle.closed).toBe(true);
  expect(circle.segments).toHaveLength(2);
  for (const segment of circle.segments) {
    expect(segment.kind).toBe("arc");
    if (segment.kind !== "arc") continue;
    expect(segment.radius).toBeCloseTo(1.1, 12);
    expect(Math.hypot(...segment.centre)).toBeLessThan(1e-15);
    expect(segment.sweep).toBe(Math.PI);
  }
});

test("positive sweep passes below the chord from left to right with y up, as F.6 says for growing angles", () => {
  const [{ segments }] = readPathData("M -1 0 A 1 1 0 0 1 1 0");
  expect(at(segments[0], 0.5)[1]).toBeCloseTo(-1, 12);
});

test("radii too small for the chord grow until they fit (F.6.6)", () => {
  const [{ segments }] = readPathData("M 0 0 A 1 1 0 0 1 4 0");
  expect(segments[0]).toMatchObject({ kind: "arc", radius: 2 });
});

test("closing, repeated commands, compressed flags and a move after Z follow the grammar", () => {
  const paths = flattenPath("m1 1 2 0 0 2zl1 1M9 9l1 0a1 1 0 011 1", 0.01);
  expect(paths.map(({ closed }) => closed)).toEqual([true, false, false]);
  expect(paths[0].points).toEqual([
    [1, 1],
    [3, 1],
    [3, 3],
  ]);
  expect(paths[1].points).toEqual([
    [1, 1],
    [2, 2],
  ]);
  expect(paths[2].points[paths[2].points.length - 1]).toEqual([11, 10]);
});

test("a zero radius is a line, an arc to its own start is nothing", () => {
  const [{ segments }] = readPathData("M0 0 A 0 1 0 0 1 2 0 A 1 1 0 1 1 2 0");
  expect(segments).toEqual([{ kind: "line", from: [0, 0], to: [2, 0] }]);
});

test("scale multiplies coordinates, tolerance holds in the scaled unit", () => {
  const [big] = flattenPath("M -1 0 A 1 1 0 0 1 1 0", 0.01, { scale: 10 });
  const [same] = flattenPath("M -10 0 A 10 10 0 0 1 10 0", 0.01);
  expect(big.points).toHaveLength(same.points.length);
  big.points.forEach(([x, y], i) => {
    expect(Math.hypot(x - same.points[i][0], y - same.points[i][1])).toBeLessThan(1e-12);
  });
});

test("circular arcs end on their command's point", () => {
  const [{ segments }] = readPathData("M 0.3 0.7 A 2 2 15 1 0 1.9 -0.4");
  const [segment] = segments;
  if (segment.kind !== "arc") throw new Error("not an arc");
  expect(segmentStart(segment)[0]).toBeCloseTo(0.3, 12);
  expect(segmentEnd(segment)[1]).toBeCloseTo(-0.4, 12);
});

test.each([
  ["", "path-malformed", /empty/],
  ["L 1 1", "path-malformed", /begin with a move/],
  ["M 0 0 L 1 x", "path-malformed", /position 11/],
  ["M 0 0 L", "path-malformed", /position 7/],
  ["M 0 0 A 1 1 0 2 1 3 3", "path-malformed", /flag/],
  ["M 0 0 L 1e999 0", "path-not-finite", /too large/],
  ["M 0 0 C 1e308 0 1e308 1 3e308 3", "path-not-finite", /too large/],
  ["M 0 0 A 1e200 1e-200 0 0 1 1 1e200", "path-not-finite", /too large/],
])("%s is refused", (d, code, message) => {
  const failure = (() => {
    try {
      readPathData(d, "pattern.regions[0].path");
    } catch (error) {
      return error;
    }
  })();
  expect(failure).toBeInstanceOf(AnnuletError);
  expect(failure).toMatchObject({ code, path: "pattern.regions[0].path", value: d });
  expect((failure as AnnuletError).message).toMatch(message);
});

test.each(["M 0 0 C 1e20 0 1e20 1 3 3", "M 0 0 A 1e20 1e20 0 0 1 1e20 1", "M 0 0 A 1e20 1e19 0 0 1 1e20 1"])(
  "%s would take too many chords, and is refused before they are made",
  (d) => {
    expect(() => flattenPath(d, 0.01, { path: "pattern.regions[0].path" })).toThrow(/pattern.*chords/);
  },
);

test("a circle smaller than the tolerance still encloses something", () => {
  for (const sweep of [0, 1]) {
    const [{ points }] = flattenPath(
      `M -0.01 0 A 0.01 0.01 0 0 ${sweep} 0.01 0 A 0.01 0.01 0 0 ${sweep} -0.01 0 Z`,
      0.05,
    );
    expect(points).toHaveLength(4);
  }
});
