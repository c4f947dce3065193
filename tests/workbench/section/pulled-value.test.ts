import { describe, expect, it } from "vitest";
import { pulledSize, SIZE_STEPS, snapSize, stepsOfKey } from "../../../src/workbench/section/pulled-value.js";

describe("a size that is pulled", () => {
  it("grows by what its grip says of the way", () => {
    expect(pulledSize(6, { at: [3, 0], pull: [2, 0] }, [0.1, 0.7])).toBeCloseTo(6.2, 12);
    expect(pulledSize(0.5, { at: [0, 1], pull: [0, -1] }, [3, 0.2])).toBeCloseTo(0.3, 12);
  });

  it("snaps to its step, without the rounding of sums, and stays in its range", () => {
    const range = { least: 0.01, most: 2 };
    expect(snapSize(0.374, SIZE_STEPS.coarse, range)).toBe(0.35);
    expect(snapSize(0.374, SIZE_STEPS.fine, range)).toBe(0.37);
    expect(snapSize(0.1 + 0.2, SIZE_STEPS.coarse, range)).toBe(0.3);
    expect(snapSize(-1, SIZE_STEPS.coarse, range)).toBe(0.01);
    expect(snapSize(9, SIZE_STEPS.coarse, range)).toBe(2);
  });

  it("moves with the arrow keys and by ten with the page keys", () => {
    expect(["ArrowUp", "ArrowLeft", "PageDown", "a"].map(stepsOfKey)).toEqual([1, -1, -10, 0]);
  });
});
