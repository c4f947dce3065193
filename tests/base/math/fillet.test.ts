// Covers: src/base/math/round-corners.ts
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  arcBySagitta,
  pointAt,
  type Segment,
  segmentEnd,
  segmentLength,
  segmentStart,
  tangentAt,
  trimSegment,
} from "../../../src/base/math/curve.js";
import { filletBetween } from "../../../src/base/math/fillet.js";
import type { Point2 } from "../../../src/base/math/point.js";
import { roundCorners } from "../../../src/base/math/round-corners.js";

const number = fc.integer({ min: -300, max: 300 }).map((n) => n / 100);
const point = fc.tuple(number, number);
const bulge = fc.oneof(
  fc.constant(0),
  fc.integer({ min: -900, max: 900 }).map((n) => n / 1000),
);

function joined([a, b, c]: readonly [Point2, Point2, Point2], bulges: readonly [number, number]): [Segment, Segment] {
  fc.pre(Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.1 && Math.hypot(b[0] - c[0], b[1] - c[1]) > 0.1);
  const reach = (p: Point2, q: Point2) => Math.hypot(p[0] - q[0], p[1] - q[1]) / 2;
  return [arcBySagitta(a, b, bulges[0] * reach(a, b)), arcBySagitta(b, c, bulges[1] * reach(b, c))];
}

test("between any two lines or arcs, a fillet touches both where they are trimmed, in their direction", () => {
  let found = 0;
  fc.assert(
    fc.property(
      fc.tuple(point, point, point),
      fc.tuple(bulge, bulge),
      fc.constantFrom(0.02, 0.1, 0.4),
      (points, bulges, radius) => {
        const [first, second] = joined(points, bulges);
        const fillet = filletBetween(first, second, radius);
        if (fillet === undefined) return;
        found++;
        const [before, after] = [segmentLength(first) - fillet.trimFirst, fillet.trimSecond];
        const touches: [Segment, number, Point2, Point2][] = [
          [first, before, segmentStart(fillet.arc), tangentAt(fillet.arc, 0)],
          [second, after, segmentEnd(fillet.arc), tangentAt(fillet.arc, segmentLength(fillet.arc))],
        ];
        for (const [segment, s, [x, y], [tx, ty]] of touches) {
          const [px, py] = pointAt(segment, s);
          const [ux, uy] = tangentAt(segment, s);
          expect(Math.hypot(px - x, py - y)).toBeLessThan(1e-9);
          expect(Math.hypot(ux - tx, uy - ty)).toBeLessThan(1e-9);
        }
        expect(fillet.arc.radius).toBe(radius);
      },
    ),
    { seed: 20261125, numRuns: 1000 },
  );
  expect(found).toBeGreaterThan(500);
});

test("a right angle's fillet takes its radius off both sides and turns a quarter", () => {
  const fillet = filletBetween(
    { kind: "line", from: [0, 0], to: [3, 0] },
    { kind: "line", from: [3, 0], to: [3, 3] },
    1,
  );
  expect(fillet?.trimFirst).toBeCloseTo(1, 14);
  expect(fillet?.trimSecond).toBeCloseTo(1, 14);
  expect(fillet?.arc.sweep).toBeCloseTo(Math.PI / 2, 14);
  expect(fillet?.arc.centre).toEqual([2, 1]);
});

test("four fillets of half the side make a square a circle; more does not fit", () => {
  const corners: Point2[] = [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ];
  const square = (round: number) =>
    corners.map((from, i) => ({ segment: { kind: "line", from, to: corners[(i + 1) % 4] } as const, round }));
  const circle = roundCorners(square(1));
  if (!circle.fits) throw new Error("does not fit");
  for (const { body, fillet } of circle.links) {
    expect(body).toBeUndefined();
    expect(fillet?.centre[0]).toBeCloseTo(1, 12);
    expect(fillet?.centre[1]).toBeCloseTo(1, 12);
  }
  expect(roundCorners(square(1.001)).fits).toBe(false);
});

test("arcs by their sagitta begin and end where they should and stand as high as they should", () => {
  fc.assert(
    fc.property(point, point, bulge, (from, to, part) => {
      const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
      fc.pre(chord > 0.1 && part !== 0);
      const sagitta = (part * chord) / 2;
      const arc = arcBySagitta(from, to, sagitta);
      expect(Math.hypot(segmentStart(arc)[0] - from[0], segmentStart(arc)[1] - from[1])).toBeLessThan(1e-10);
      expect(Math.hypot(segmentEnd(arc)[0] - to[0], segmentEnd(arc)[1] - to[1])).toBeLessThan(1e-10);
      const [x, y] = pointAt(arc, segmentLength(arc) / 2);
      // Distance to the right of the chord.
      const right = ((x - from[0]) * (to[1] - from[1]) - (y - from[1]) * (to[0] - from[0])) / chord;
      expect(right).toBeCloseTo(sagitta, 10);
    }),
    { seed: 20261125 },
  );
});

test("trimming takes the given lengths off", () => {
  const arc = arcBySagitta([0, 0], [2, 1], 0.4);
  const rest = trimSegment(arc, 0.3, 0.5);
  expect(segmentLength(rest)).toBeCloseTo(segmentLength(arc) - 0.8, 12);
  expect(segmentStart(rest)[0]).toBeCloseTo(pointAt(arc, 0.3)[0], 12);
});
