import { describe, expect, it } from "vitest";
import { readNumber } from "../../../src/workbench/words/read-number.js";

describe("a typed number", () => {
  it("has a decimal comma or point, and may have a unit", () => {
    expect(["7.4", "7,4", " 7,40 mm", ".5", "-2,", "−0,25", "90°", "+3 %"].map(readNumber)).toEqual([
      7.4, 7.4, 7.4, 0.5, -2, -0.25, 90, 3,
    ]);
  });

  it("is nothing else", () => {
    for (const typed of ["", "1.2.3", "1,234,5", "e5", "mm", "7 4", "NaN", "Infinity"])
      expect(readNumber(typed)).toBeUndefined();
  });
});
