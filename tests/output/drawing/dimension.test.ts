import { describe, expect, it } from "vitest";
import { levelDimension, uprightDimension } from "../../../src/output/drawing/dimension.js";
import { svgDocument } from "../../../src/output/drawing/svg.js";
import { covered, parseSvg } from "./raster.js";

/** The dimension alone on a clear sheet, without its text. */
const lines = (dimension: string) =>
  svgDocument(60, 60, "t", dimension).replaceAll(/<text.*?<\/text>|<rect class="paper"[^>]*>/g, "");

const AT = { at: 30, start: 24, label: "width", value: "7.000" };

describe("dimensions", () => {
  it("reach from extension line to extension line", () => {
    const level = covered(lines(levelDimension(20, 27, AT)), 40).box;
    expect([level.left, level.right]).toEqual([expect.closeTo(20 - 0.065, 1), expect.closeTo(27 + 0.065, 1)]);
    expect([level.top, level.bottom]).toEqual([expect.closeTo(24, 1), expect.closeTo(30.8, 1)]);
    const upright = covered(lines(uprightDimension(20, 27, AT)), 40).box;
    expect([upright.top, upright.bottom]).toEqual([expect.closeTo(20 - 0.065, 1), expect.closeTo(27 + 0.065, 1)]);
  });

  it("have their arrows outside where there is no room between", () => {
    const { box } = covered(lines(levelDimension(20, 23, AT)), 40);
    expect(box.left).toBeLessThan(18);
    expect(box.right).toBeGreaterThan(25);
  });

  it("set their text beyond the extension lines, on the far side of the object", () => {
    const baselines = (dimension: string) =>
      [...parseSvg(svgDocument(60, 60, "t", dimension)).getElementsByTagName("text")].map((text) =>
        Number(text.getAttribute("y")),
      );
    expect(Math.min(...baselines(levelDimension(20, 23, AT)))).toBeGreaterThan(30.8 + 1.8);
    expect(Math.max(...baselines(levelDimension(20, 23, { ...AT, start: 36 })))).toBeLessThan(30 - 0.8);
  });
});
