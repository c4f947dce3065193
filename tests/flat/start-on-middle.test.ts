import { describe, expect, it } from "vitest";
import type { Point2 } from "../../src/base/math/point.js";
import { startOnMiddle } from "../../src/flat/start-on-middle.js";

const square: Point2[] = [
  [0, -1],
  [2, -1],
  [2, 1],
  [0, 1],
];

describe("a loop begun on the middle line", () => {
  it("begins where a side crosses it, and is the same loop", () => {
    const line = startOnMiddle({ points: square, kind: "loop", even: true });
    expect(line.points).toEqual([
      [2, 0],
      [2, 1],
      [0, 1],
      [0, -1],
      [2, -1],
    ]);
  });

  it("begins at a corner that lies on it", () => {
    const points: Point2[] = [
      [1, -1],
      [2, 0],
      [1, 1],
      [0, 0],
    ];
    const line = startOnMiddle({ points, kind: "loop", even: true });
    expect(line.points).toEqual([
      [2, 0],
      [1, 1],
      [0, 0],
      [1, -1],
    ]);
  });

  it("is any other line as it is: open, without symmetry, or off the middle", () => {
    const high = square.map(([u, v]): Point2 => [u, v + 2]);
    for (const line of [
      { points: square, kind: "open", even: true },
      { points: square, kind: "loop", even: false },
      { points: high, kind: "loop", even: true },
    ] as const) {
      expect(startOnMiddle(line)).toBe(line);
    }
  });
});
