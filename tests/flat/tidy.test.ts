import { describe, expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { takePeriod } from "../../src/flat/period.js";
import { copiesAlong, steps } from "../../src/flat/strip.js";
import { tidy } from "../../src/flat/tidy.js";
import { areaOf, collector, failureOf, stripOf } from "./strips.js";

const strip = stripOf({ cover: 120, repeats: 3 });
const mm = (...points: [number, number][]): GridPath =>
  points.map(([x, y]) => ({ x: Math.round(steps(strip, x)), y: Math.round(steps(strip, y)) }));
const box = (left: number, right: number) => mm([left, -1], [right, -1], [right, 1], [left, 1]);

describe("tidying", () => {
  it("leaves a clear region alone, but for vertices that carry no shape", () => {
    const { codes, warn } = collector();
    expect(tidy(strip, [box(1, 3), box(3.02, 5)], "r", warn)).toHaveLength(2);
    expect(tidy(strip, [mm([1, -1], [2, -1], [3, -1], [3, 1], [1, 1])], "r", warn)[0]).toHaveLength(4);
    expect(tidy(strip, [], "r", warn)).toEqual([]);
    expect(codes).toEqual([]);
  });

  it("closes a gap of 5 µm, opens a neck of 5 µm and says so, with its place", () => {
    const { warnings, warn } = collector();
    expect(tidy(strip, [box(1, 3), box(3.005, 5)], "pattern.regions[2]", warn)).toHaveLength(1);
    const neck = mm(
      [1, -1],
      [2, -1],
      [2, -0.0025],
      [3, -0.0025],
      [3, -1],
      [4, -1],
      [4, 1],
      [3, 1],
      [3, 0.0025],
      [2, 0.0025],
      [2, 1],
      [1, 1],
    );
    const parted = tidy(strip, [neck], "pattern.regions[2]", warn);
    expect(parted).toHaveLength(2);
    expect(areaOf(strip, parted)).toBeCloseTo(4, 2);
    expect(warnings.map(({ code, path }) => [code, path])).toEqual(
      new Array(2).fill(["hairline", "pattern.regions[2]"]),
    );
  });

  it("moves nothing but what comes near a hairline", () => {
    const { warn } = collector();
    // A tip of 20°, which opening would blunt.
    const tip = mm([8, -1], [11, -0.5], [8, 0]);
    const touched = tidy(strip, [box(1, 3), box(3.005, 5), tip], "r", warn);
    expect(touched).toContainEqual(tidy(strip, [tip], "r", warn)[0]);
  });

  it("tells the share of the area that is lost, and where", () => {
    const { warnings, warn } = collector();
    const sliver = mm([7, 0], [9, 0], [9, 0.005], [7, 0.005]);
    expect(tidy(strip, [box(1, 3), sliver], "r", warn)).toHaveLength(1);
    expect(warnings[0].value).toMatchObject({
      x: expect.closeTo(8 / 6 - 1, 1),
      width: expect.closeTo(0.005, 3),
      lost: { share: 0.0025, x: 0.333, y: 0 },
    });
    expect(warnings[0].message).toMatch(/with them went 0\.25 % of its area, most of it at x 0\.333, y 0 /);
  });

  it("tells of specks that carry no shape at all", () => {
    const { warnings, warn } = collector();
    const speck = mm([7, 0], [7.0005, 0], [7.0005, 0.0005], [7, 0.0005]);
    expect(tidy(strip, [box(1, 3), speck], "r", warn)).toHaveLength(1);
    expect(warnings[0].message).toMatch(/too small to be made.*went 0\.0000062 %/);
  });

  it("refuses a region of which nothing is left", () => {
    const { warn } = collector();
    const sliver = mm([7, 0], [9, 0], [9, 0.005], [7, 0.005]);
    expect(failureOf(() => tidy(strip, [sliver], "pattern.regions[1]", warn))).toMatchObject({
      code: "region-vanishes",
      path: "pattern.regions[1]",
    });
  });

  it("cleans one period and takes its copies along the strip, cut by the tile's border or not", () => {
    const round = stripOf({ symmetry: "p1", repeats: 9 });
    const { warnings, warn } = collector();
    const pair = [box(1, 1.5), box(1.505, 2)];
    const across = [box(5.4, 5.9), box(5.905, 6.4)];
    const all = [...pair, ...across].flatMap((ring) => copiesAlong(round, ring));
    const clean = takePeriod(round, tidy(round, all, "r", warn));
    expect(clean).toHaveLength(2);
    expect(areaOf(round, clean)).toBeCloseTo(2 * 2, 2);
    expect(warnings).toHaveLength(1);
  });
});
