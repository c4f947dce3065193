import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { findJunctions, type MeetingLine } from "../../src/beads/junctions.js";
import type { RunLine } from "../../src/flat/runs.js";

const meeting = (points: readonly Point2[], kind: RunLine["kind"], rest: Partial<MeetingLine> = {}): MeetingLine => ({
  line: { points, kind, even: false },
  diameter: 0.4,
  level: 0,
  shares: true,
  ...rest,
});

const across = (y: number, rest?: Partial<MeetingLine>) =>
  meeting(
    [
      [0, y],
      [6, y],
    ],
    "strand",
    rest,
  );
const up = (x: number, low: number, high: number, rest?: Partial<MeetingLine>) =>
  meeting(
    [
      [x, low],
      [x, high],
    ],
    "open",
    rest,
  );

const close = (found: number[][], wanted: number[][]) => {
  expect(found.map((one) => one.length)).toEqual(wanted.map((one) => one.length));
  found.forEach((one, i) => {
    one.forEach((at, k) => {
      expect(at).toBeCloseTo(wanted[i][k], 9);
    });
  });
};

describe("junctions", () => {
  it("are where lines cross", () => {
    close(findJunctions([across(0), up(1.5, -1, 1)], 6), [[0.25], [0.5]]);
  });

  it("are where a line ends on another, or a hair beside it", () => {
    close(findJunctions([across(0), up(3, 0, 1)], 6), [[0.5], [0]]);
    close(findJunctions([across(0), up(3, 0.015, 1)], 6), [[0.5], [0]]);
    close(findJunctions([across(0), up(3, 0.03, 1)], 6), [[], []]);
  });

  it("part a line that shares at the end of one that does not, but are not where only one shares", () => {
    close(findJunctions([across(0), up(3, 0, 1, { shares: false })], 6), [[0.5], []]);
    close(findJunctions([across(0), up(3, -1, 1, { shares: false })], 6), [[], []]);
    close(findJunctions([across(0, { shares: false }), up(3, -1, 1, { shares: false })], 6), [[], []]);
  });

  it("are with the copies in other tiles too", () => {
    // The line leaves its tile and crosses its own copy's neighbour; each line meets the other once a tile.
    close(findJunctions([across(0), up(-4.5, -1, 1)], 6), [[0.25], [0.5]]);
    const long = meeting(
      [
        [0, -1],
        [9, 1],
      ],
      "open",
    );
    const fall = up(7.5, -1, 1);
    // At x 1.5 and 7.5 of the long line.
    close(findJunctions([long, fall], 6), [
      [1.5 / 9, 7.5 / 9],
      [1.5 / 9, 7.5 / 9],
    ]);
  });

  it("are one where a line crosses a strand at its start", () => {
    close(findJunctions([across(0), up(0, -1, 1)], 6), [[0], [0.5]]);
  });

  it("are two where a loop is crossed, one where it is touched", () => {
    const circle = Array.from({ length: 96 }, (_, i): Point2 => {
      const angle = (2 * Math.PI * i) / 96;
      return [3 + Math.cos(angle), Math.sin(angle)];
    });
    const loop = meeting(circle, "loop");
    expect(findJunctions([loop, across(0.5)], 6).map((one) => one.length)).toEqual([2, 2]);
    close(findJunctions([loop, across(1)], 6), [[24], [0.5]]);
    close(findJunctions([loop, across(0.999)], 6), [[24], [0.5]]);
    close(findJunctions([loop, across(1.01)], 6), [[24], [0.5]]);
  });

  it("are where a line crosses itself, and where it crosses its own copies", () => {
    const eight: Point2[] = [
      [1, -1],
      [3, 1],
      [3, -1],
      [1, 1],
    ];
    close(findJunctions([meeting(eight, "open")], 6), [[0.5, 2.5]]);
    const slope = meeting(
      [
        [0, 0],
        [8, 0],
        [7, 1],
        [7, -1],
      ],
      "open",
    );
    // (1, 0) of the copy one tile on lies at (7, 0), where this copy's last side crosses its first too.
    const [found] = findJunctions([slope], 6);
    for (const wanted of [1 / 8, 7 / 8, 2.5]) expect(found.some((at) => Math.abs(at - wanted) < 1e-9)).toBe(true);
  });

  it("are not where lines run along each other, nor at different levels", () => {
    const bow = (sag: number) =>
      meeting(
        Array.from({ length: 61 }, (_, i): Point2 => [i / 10, sag * Math.sin((Math.PI * i) / 60)]),
        "strand",
      );
    expect(findJunctions([bow(0.01), bow(-0.004)], 6)).toEqual([[], []]);
    expect(findJunctions([across(0, { level: 0.1 }), up(3, -1, 1)], 6)).toEqual([[], []]);
  });
});
