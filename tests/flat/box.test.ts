import { describe, expect, it } from "vitest";
import { boxRing, ringBox } from "../../src/flat/box.js";
import { ringArea } from "../../src/flat/polygons.js";

describe("boxes", () => {
  const box = { left: -3, right: 8, low: -3, high: 8 };

  it("knows a ring's box", () => {
    expect(ringBox(boxRing(box))).toEqual({ left: -3, right: 8, low: -3, high: 8 });
    expect(
      ringBox([
        { x: 8, y: -3 },
        { x: 0, y: 8 },
        { x: -3, y: 1 },
      ]),
    ).toEqual(box);
  });

  it("outlines a box counter-clockwise", () => {
    expect(ringArea(boxRing({ left: 1, right: 4, low: -2, high: 3 }))).toBe(15);
  });
});
