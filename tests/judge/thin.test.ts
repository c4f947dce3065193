import { describe, expect, it } from "vitest";
import { findThin } from "../../src/judge/thin.js";

/** Triangles of these corners, in threes. */
const thinOf = (...points: (readonly [number, number, number])[]) => {
  const positions = Float64Array.from(points.flat());
  const triangles = Uint32Array.from(points.keys());
  return findThin({ positions, triangles }, new Uint8Array(points.length / 3));
};

const far = [
  [1e6, 0, 0],
  [1e6, 1, 0],
  [1e6, 0, 1],
] as const;

describe("triangles without area", () => {
  it("are judged by their own coordinates, however far others lie", () => {
    // 1e-10 mm is nothing to a triangle a kilometre away, and much to one that is 1e-3 mm wide.
    const [low, none] = [[5e-4, 1e-10, 0] as const, [5e-4, 0, 0] as const];
    expect(thinOf([0, 0, 0], [1e-3, 0, 0], low, ...far).flat).toEqual([]);
    expect(thinOf([0, 0, 0], [1e-3, 0, 0], none, ...far).flat).toEqual([0]);
    expect(thinOf(...far, [1e6, 0, 0], [1e6 + 1, 0, 0], [1e6 + 0.5, 1e-10, 0]).flat).toEqual([1]);
  });

  it("are found beside coordinates that are no numbers or have no end", () => {
    const broken = [
      [Number.NaN, 0, 0],
      [Number.POSITIVE_INFINITY, 1, 0],
      [0, 0, 1],
    ] as const;
    expect(thinOf(...broken, [0, 0, 0], [1, 0, 0], [2, 0, 0]).flat).toContain(1);
    expect(thinOf(...broken, [0, 0, 0], [1, 0, 0], [0, 1, 0]).flat).not.toContain(1);
  });
});
