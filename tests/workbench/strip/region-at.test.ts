import { describe, expect, it } from "vitest";
import type { FlatRegion } from "../../../src/index.js";
import { isInside, regionAt } from "../../../src/workbench/strip/region-at.js";

const square = (low: number, high: number): [number, number][] => [
  [low, low],
  [high, low],
  [high, high],
  [low, high],
];

const region = (name: string, ...rings: [number, number][][]): FlatRegion => ({
  names: [name],
  mode: "raised",
  height: 1,
  rings,
});

describe("the region at a place", () => {
  it("is the topmost that encloses it, and not its hole", () => {
    const regions = [region("low", square(0, 4)), region("frame", square(1, 3), square(1.5, 2.5).reverse())];
    expect(regionAt(regions, [1.2, 1.2], 5)?.names).toEqual(["frame"]);
    expect(regionAt(regions, [2, 2], 5)?.names).toEqual(["low"]);
    expect(regionAt(regions, [4.5, 2], 5)).toBeUndefined();
  });

  it("is found on copies too", () => {
    const regions = [region("low", square(0, 4))];
    expect(regionAt(regions, [-3, 1], 5)?.names).toEqual(["low"]);
    expect(regionAt(regions, [12, 1], 5)?.names).toEqual(["low"]);
    expect(regionAt(regions, [-0.5, 1], 5)).toBeUndefined();
  });

  it("counts a corner on its height once", () => {
    const diamond: [number, number][] = [
      [0, 1],
      [1, 0],
      [2, 1],
      [1, 2],
    ];
    expect(isInside([1, 1], [diamond])).toBe(true);
    expect(isInside([3, 1], [diamond])).toBe(false);
    expect(isInside([-1, 1], [diamond])).toBe(false);
  });
});
