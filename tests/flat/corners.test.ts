import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { findCorners } from "../../src/flat/corners.js";
import type { RunLine } from "../../src/flat/runs.js";
import { walkLine } from "../../src/flat/walk-line.js";
import { SEED } from "./strips.js";

const degrees = (radians: number) => (radians * 180) / Math.PI;
const limit = { angle: Math.PI / 6, reach: 0.05 };
const line = (points: readonly Point2[], kind: RunLine["kind"]): RunLine => ({ points, kind, even: false });
const on = (radius: number, degree: number): Point2 => [
  radius * Math.cos((degree * Math.PI) / 180),
  radius * Math.sin((degree * Math.PI) / 180),
];

describe("the corners of a line", () => {
  it("are the four of a square, where it begins too", () => {
    const corners = findCorners(
      line(
        [
          [0, 0],
          [2, 0],
          [2, 2],
          [0, 2],
        ],
        "loop",
      ),
      limit,
    );
    expect(corners.map(({ at }) => at)).toEqual([0, 1, 2, 3]);
    for (const { turn } of corners) expect(degrees(turn)).toBeCloseTo(90, 9);
  });

  it("are not the ends of an open line", () => {
    const zigzag: Point2[] = [
      [0, 0],
      [1, 1],
      [2, 0],
      [3, 1],
    ];
    expect(findCorners(line(zigzag, "open"), limit).map(({ at }) => at)).toEqual([1, 2]);
  });

  it("are those at a strand's start, where it goes on into the next tile", () => {
    const peaks: Point2[] = [
      [0, 0],
      [1, 1],
      [2, 0],
    ];
    expect(findCorners(line(peaks, "strand"), limit).map(({ at }) => at)).toEqual([0, 1]);
    expect(findCorners(line([peaks[0], [1, 0], peaks[2]], "strand"), limit)).toEqual([]);
  });

  it("are no chords of a curve, however coarse, as long as it is wide against a bead", () => {
    for (const chords of [12, 24, 200]) {
      const circle = Array.from({ length: chords }, (_, i) => on(1, (360 * i) / chords));
      expect(findCorners(line(circle, "loop"), { ...limit, angle: Math.PI / 6 + 1e-9 })).toEqual([]);
    }
  });

  it("are in the middle of a tiny round", () => {
    // Two sides of 1 mm with a quarter round of 0.02 mm between them, in 7 chords.
    const round = Array.from({ length: 8 }, (_, i) => on(0.02, -90 + (90 * i) / 7)).map(
      ([x, y]): Point2 => [1 + x, 0.02 + y],
    );
    const bent = line([[0, 0], ...round, [1.02, 1]], "open");
    const [corner, ...rest] = findCorners(bent, limit);
    expect(rest).toEqual([]);
    expect(corner.at).toBeCloseTo(4.5, 9);
    expect(degrees(corner.turn)).toBeGreaterThan(60);
  });

  it("turn by more than the angle asked for", () => {
    fc.assert(
      fc.property(fc.double({ min: 8, max: 170, noNaN: true }), fc.boolean(), (turn, left) => {
        const [x, y] = on(2, left ? turn : -turn);
        const bent = line(
          [
            [0, 0],
            [2, 0],
            [2 + x, y],
          ],
          "open",
        );
        const found = (angle: number) => findCorners(bent, { ...limit, angle: (angle * Math.PI) / 180 });
        expect(found(turn + 0.001)).toEqual([]);
        const [corner] = found(turn - 0.001);
        expect(corner.at).toBe(1);
        expect(degrees(corner.turn)).toBeCloseTo(turn, 6);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it("are the same when the line is drawn backwards", () => {
    const coordinate = fc.integer({ min: -10, max: 10 }).map((n) => n / 3);
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 4, maxLength: 9 }), (drawn) => {
        const points = drawn.filter(
          ([x, y], i) => i === 0 || Math.hypot(x - drawn[i - 1][0], y - drawn[i - 1][1]) > 0.2,
        );
        if (points.length < 3) return;
        const forward = line(points, "open");
        const back = line([...points].reverse(), "open");
        const { length } = walkLine(forward);
        const places = (one: RunLine) => {
          const walk = walkLine(one);
          return findCorners(one, limit).map(({ at }) => {
            const i = Math.min(Math.floor(at), walk.stations.length - 2);
            return walk.stations[i] + (at - i) * (walk.stations[i + 1] - walk.stations[i]);
          });
        };
        const mirrored = places(back)
          .map((s) => length - s)
          .reverse();
        expect(mirrored).toHaveLength(places(forward).length);
        places(forward).forEach((s, i) => {
          expect(mirrored[i]).toBeCloseTo(s, 9);
        });
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
