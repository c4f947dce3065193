// Covers: src/base/math/extent.ts, src/base/math/nearest-share.ts, src/base/math/smooth-step.ts
import { describe, expect, it } from "vitest";
import { extent } from "../../../src/base/math/extent.js";
import { nearestShare } from "../../../src/base/math/nearest-share.js";
import { smoothStep } from "../../../src/base/math/smooth-step.js";

describe("extent", () => {
  it("finds the smallest and largest of a list too long to spread", () => {
    expect(extent(Array.from({ length: 500_000 }, (_, i) => (i * 7919) % 500_000))).toEqual([0, 499_999]);
    expect(extent([])).toEqual([Infinity, -Infinity]);
  });
});

describe("where a side comes nearest", () => {
  it("lies between its ends, or at one of them", () => {
    expect(nearestShare(3, 5, 4, 0)).toBe(0.75);
    expect(nearestShare(-1, 1, 4, 0)).toBe(0);
    expect(nearestShare(9, 1, 4, 0)).toBe(1);
    expect(nearestShare(1, 1, 0, 0)).toBe(0);
  });
});

describe("smoothStep", () => {
  it("goes from 0 to 1, level at both ends, and stays there", () => {
    expect([-1, 0, 0.5, 1, 2].map(smoothStep)).toEqual([0, 0, 0.5, 1, 1]);
    const slope = (t: number) => (smoothStep(t + 1e-6) - smoothStep(t - 1e-6)) / 2e-6;
    for (const t of [0, 1]) expect(Math.abs(slope(t))).toBeLessThan(1e-5);
    expect(slope(0.5)).toBeCloseTo(1.5, 6);
  });
});
