import { describe, expect, it } from "vitest";
import { broughtBy, MIDDLE_MIRROR, mirrorAt, turnAbout } from "../../../src/base/math/about-axis.js";

const close = (point: readonly number[], expected: readonly number[]) => {
  point.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i], 12);
  });
};

describe("motions about the axis", () => {
  it("turn counter-clockwise seen from +z, and leave heights", () => {
    close(broughtBy(turnAbout(Math.PI / 2), [2, 1, 3]), [-1, 2, 3]);
    close(broughtBy(turnAbout(-Math.PI / 6), [2, 0, 3]), [Math.sqrt(3), -1, 3]);
  });

  it("mirror in a plane through the axis, whose points stay, and in the middle plane", () => {
    close(broughtBy(mirrorAt(0), [2, 1, 3]), [2, -1, 3]);
    close(broughtBy(mirrorAt(Math.PI / 2), [2, 1, 3]), [-2, 1, 3]);
    const angle = 0.7;
    close(broughtBy(mirrorAt(angle), [Math.cos(angle), Math.sin(angle), 5]), [Math.cos(angle), Math.sin(angle), 5]);
    expect(broughtBy(MIDDLE_MIRROR, [2, 1, 3])).toEqual([2, 1, -3]);
  });
});
