import { describe, expect, it } from "vitest";
import { clipLines } from "../../src/flat/clip-lines.js";
import type { GridPath } from "../../src/flat/grid.js";

const line = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x, y }));
const clip = (points: GridPath, closed = false) => clipLines([{ points, closed }], 0, 100);

describe("clipping lines to the stretch covered", () => {
  it("leaves what lies inside, and drops what lies outside or only touches", () => {
    const inside = line([0, 5], [100, 5]);
    expect(clip(inside)).toEqual([{ points: inside, closed: false }]);
    expect(clip(line([-20, 0], [-5, 0]))).toEqual([]);
    expect(clip(line([-20, 0], [0, 0]))).toEqual([]);
    expect(clip(line([-20, 0], [0, 5], [-20, 10]))).toEqual([]);
    expect(clip(line([100, 0], [120, 0]))).toEqual([]);
  });

  it("cuts at both ends, also a line that leaves and comes back", () => {
    expect(clip(line([-10, 0], [110, 120]))).toEqual([{ points: line([0, 10], [100, 110]), closed: false }]);
    const pieces = clip(line([50, 0], [150, 0], [150, 10], [50, 10]));
    expect(pieces.map(({ points }) => points)).toEqual([line([50, 0], [100, 0]), line([100, 10], [50, 10])]);
  });

  it("opens a loop that is cut into one line for each stretch inside", () => {
    const pieces = clip(line([50, 0], [150, 0], [150, 10], [50, 10]), true);
    expect(pieces).toHaveLength(1);
    expect(pieces[0]).toEqual({ points: line([100, 10], [50, 10], [50, 0], [100, 0]), closed: false });
    expect(clip(line([-10, 0], [110, 0], [110, 10], [-10, 10]), true)).toHaveLength(2);
  });
});
