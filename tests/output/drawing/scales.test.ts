import { describe, expect, it } from "vitest";
import { scaleFor, showScale } from "../../../src/output/drawing/scales.js";

describe("the scale of a drawing", () => {
  it("is the largest that has room in both ways", () => {
    const room = [100, 50] as const;
    const sizes = [
      [10, 5],
      [10.1, 5],
      [10, 10.1],
      [40, 25],
      [50.1, 5],
      [100, 50],
      [200, 5],
    ] as const;
    expect(sizes.map((size) => scaleFor(size, room))).toEqual([10, 5, 2, 2, 1, 1, 1]);
  });

  it("is written as drawings write it", () => {
    expect(showScale(5)).toBe("5:1");
  });
});
