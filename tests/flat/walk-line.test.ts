import { describe, expect, it } from "vitest";
import { sideAt, walkLine } from "../../src/flat/walk-line.js";

const square = {
  points: [
    [0, 0],
    [2, 0],
    [2, 2],
    [0, 2],
  ],
  kind: "loop",
} as const;

describe("walking along a line", () => {
  it("goes round a loop again and again", () => {
    const walk = walkLine(square);
    expect(walk.length).toBe(8);
    expect(walk.pointAt(3)).toEqual([2, 1]);
    expect(walk.pointAt(-1)).toEqual([0, 1]);
    expect(walk.pointAt(8 + 3)).toEqual([2, 1]);
    expect(walk.locate(7)).toBe(3.5);
  });

  it("goes on into the next tile on a strand", () => {
    const walk = walkLine({
      points: [
        [0, 0],
        [1, 1],
        [4, 0],
      ],
      kind: "strand",
    });
    const [u, v] = walk.pointAt(walk.length + Math.SQRT2 / 2);
    expect(u).toBeCloseTo(4.5, 12);
    expect(v).toBeCloseTo(0.5, 12);
    const [before, height] = walk.pointAt(-Math.sqrt(10) / 3);
    expect(before).toBeCloseTo(-1, 12);
    expect(height).toBeCloseTo(1 / 3, 12);
  });

  it("stays at the ends of an open line", () => {
    const walk = walkLine({ points: square.points, kind: "open" });
    expect(walk.length).toBe(6);
    expect(walk.pointAt(-1)).toEqual([0, 0]);
    expect(walk.pointAt(7)).toEqual([0, 2]);
  });

  it("finds a value between stations", () => {
    expect(sideAt([0, 1, 3, 3, 5], 2)).toBe(1.5);
    expect(sideAt([0, 1, 3, 3, 5], 5)).toBe(4);
    expect(sideAt([0, 1, 3, 3, 5], -1)).toBe(0);
  });
});
