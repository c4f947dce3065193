import { describe, expect, it } from "vitest";
import { SCALE_BAR, scaleBar } from "../../../src/output/drawing/scale-bar.js";

describe("the scale bar", () => {
  it.each([SCALE_BAR.length, 20])("of %i mm is as long as it says", (length) => {
    const bar = scaleBar([3, 4], length);
    const widths = [...bar.matchAll(/<rect[^>]* width="([\d.]+)"/g)].map(([, width]) => Number(width));
    expect(widths).toEqual([length / 2, length / 2, length]);
    const texts = [...bar.matchAll(/<text[^>]* x="([\d.]+)"[^>]*>([^<]*)</g)].map(([, x, text]) => [Number(x), text]);
    expect(texts).toEqual([
      [3, "0"],
      [3 + length, `${length} mm`],
    ]);
  });
});
