import { describe, expect, it } from "vitest";
import type { Warning } from "../../src/base/errors.js";
import { completeArt } from "../../src/relief/art.js";
import { collector, region, stripOf } from "./strips.js";

/** The hairline that completing a region warns of, in a tile 6 mm wide. */
function hairlineOf(path: string, symmetry: "p1" | "p1m1" | "p2mm") {
  const { warnings, warn } = collector();
  completeArt(stripOf({ symmetry }), region({ path }), "r", warn);
  return warnings.find(({ code }) => code === "hairline");
}

const MICRON = 1e-3 / 6;

describe("a hairline made by a line of symmetry is told with its place and width", () => {
  it("two tips that meet on a mirror", () => {
    const warning = hairlineOf("M 0.5 0.1 L 0.2 0.3 L 0.2 -0.2 Z", "p1m1");
    expect(warning?.value).toMatchObject({ x: 0.5, y: 0.1, width: 0 });
    expect(warning?.message).toMatch(/touch in a point at x 0.5, y 0.1/);
  });

  it("a gap of 6 µm beside a mirror, wherever the narrowest place of it is", () => {
    const near = 0.5 - 3 * MICRON;
    const warning = hairlineOf(`M ${near} 0.1 L 0.2 0.3 L 0.2 -0.2 Z`, "p1m1");
    expect(warning?.value).toMatchObject({ x: 0.5, y: 0.1 });
    expect(warning?.value).toHaveProperty("width", expect.closeTo(0.006, 3));
    expect(warning?.message).toMatch(/gap is 0.00\d+ mm wide/);
  });

  it("a sliver of 5 µm where images overlap", () => {
    const warning = hairlineOf(`M 0.25 0.2 V ${2.5 * MICRON} H 0 V ${-0.5 * MICRON} H 0.4 V 0.2 Z`, "p2mm");
    expect(warning?.value).toMatchObject({ y: expect.closeTo(0, 3), width: expect.closeTo(0.005, 3) });
    const { x } = (warning as Warning).value as { readonly x: number };
    expect(Math.min(x, 1 - x)).toBeLessThan(0.25);
    expect(warning?.message).toMatch(/the region is 0.00\d+ mm wide/);
  });

  it("not where there is none", () => {
    expect(hairlineOf("M 0.45 0.1 L 0.2 0.3 L 0.2 -0.2 Z", "p1m1")).toBeUndefined();
    expect(hairlineOf("M 0.55 0.1 L 0.2 0.3 L 0.2 -0.2 Z", "p1m1")).toBeUndefined();
  });
});
