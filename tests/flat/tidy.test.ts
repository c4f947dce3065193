import { describe, expect, it } from "vitest";
import type { GridPath } from "../../src/flat/grid.js";
import { steps } from "../../src/flat/strip.js";
import { tidy } from "../../src/flat/tidy.js";
import { areaOf, collector, stripOf } from "./strips.js";

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
});
