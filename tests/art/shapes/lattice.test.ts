// Covers: src/art/shapes/snap.ts, src/art/shapes/tile-middle.ts, src/design/shapes/lattice.ts
import { describe, expect, it } from "vitest";
import { operatePath } from "../../../src/flat/grid.js";
import { clipWithin } from "../../../src/flat/polygons.js";
import { completeArt } from "../../../src/relief/art.js";
import { areaOf, circle, collector, differenceArea, failureOf, region, stripOf } from "../../flat/strips.js";
import { drawShape } from "./shapes.js";

const dot = { path: circle(0.5, 0, 0.11) };

describe("copies in cells", () => {
  it.each([
    ["straight", 3, 2],
    ["half-drop", 4, 2],
    ["half-drop", 2, 3],
    ["brick", 3, 2],
  ])("%s, %i by %i: what is cut off at the top comes in from below", (set, columns, rows) => {
    const one = drawShape({ path: circle(0.5, 0, 0.055) }).area;
    const { area } = drawShape({ lattice: { columns, rows, set, scale: 0.5 }, of: dot });
    expect(Math.abs(area / (columns * rows * one) - 1)).toBeLessThan(0.01);
  });

  it.each([
    [
      "straight",
      3,
      [
        [1 / 3, 0],
        [0, 1 / 2],
      ],
    ],
    [
      "half-drop",
      4,
      [
        [1 / 4, -1 / 4],
        [1 / 2, 0],
      ],
    ],
    [
      "brick",
      3,
      [
        [1 / 6, -1 / 2],
        [1 / 3, 0],
      ],
    ],
  ] as const)("%s, completed: moved by a step of the lattice it is itself", (set, columns, shifts) => {
    const strip = stripOf({ rows: 2, tileWidth: 6 });
    const { codes, warn } = collector();
    const leaf = { path: "M 0.5 -0.2 L 0.68 0.05 L 0.5 0.2 L 0.42 0 Z" };
    const art = completeArt(strip, region({ shape: { lattice: { columns, rows: 2, set }, of: leaf } }), "r", warn);
    expect(codes).toEqual([]);
    const window = { left: 0, right: strip.grid.tile, low: -strip.rowStep / 2, high: strip.rowStep / 2 };
    const seen = clipWithin(art.region, window, 0);
    expect(areaOf(strip, seen)).toBeGreaterThan(1);
    for (const [x, y] of shifts) {
      const moved = art.region.map((ring) => {
        const [dx, dy] = [Math.round(x * strip.grid.tile), Math.round(y * strip.grid.tile)];
        return ring.map((point) => ({ x: point.x + dx, y: point.y + dy }));
      });
      expect(differenceArea(strip, seen, clipWithin(moved, window, 0))).toBeLessThan(1e-4);
    }
  });

  it("takes lines along, cut at the tile's top and bottom", () => {
    const { drawn } = drawShape({
      lattice: { columns: 2, rows: 1, set: "half-drop" },
      of: { path: "M 0.5 -0.2 V 0.2" },
    });
    const spans = drawn.open.map((line) => line.map(({ y }) => y / 6e6).sort((a, b) => a - b));
    expect(spans.map(([low, high]) => (high - low).toFixed(4)).sort()).toEqual(["0.2000", "0.2000", "0.4000"]);
  });

  it("joins copies that meet but for rounding", () => {
    const third = 1 / 6;
    const cell = { path: `M ${0.5 - third} ${-third} L ${0.5 + third} ${-third} V ${third} H ${0.5 - third} Z` };
    const { drawn, area } = drawShape({ lattice: { columns: 3, rows: 3 }, of: cell }, { tileWidth: 6.12345 });
    expect(drawn.closed).toHaveLength(1);
    expect(area).toBeCloseTo(6.12345 ** 2, 4);
    const slice = `M 0.5 0 L 0.9 0 A 0.4 0.4 0 0 1 ${0.5 + 0.4 * Math.cos((2 * Math.PI) / 7)} ${0.4 * Math.sin((2 * Math.PI) / 7)} Z`;
    expect(drawShape({ turns: 7, of: { path: slice } }).drawn.closed).toHaveLength(1);
  });

  it.each([
    ["half-drop with an odd number of columns", { columns: 3, rows: 2, set: "half-drop" }, "columns", 1],
    ["brick with an odd number of rows under another tile", { columns: 3, rows: 3, set: "brick" }, "rows", 2],
  ])("%s is refused", (_, lattice, field, rows) => {
    const error = failureOf(() => drawShape({ lattice, of: dot }, { rows }));
    expect([error.code, error.path]).toEqual(["lattice-odd", `shape.lattice.${field}`]);
  });

  it("stay in their cells where a tile is stretched", () => {
    const strip = { ...stripOf(), tileHeight: 7, rowStep: 7_000_000 };
    const { warn } = collector();
    const art = completeArt(
      strip,
      region({ shape: { lattice: { columns: 1, rows: 2, scale: 0.5 }, of: dot } }),
      "r",
      warn,
    );
    const [left] = art.region.filter((ring) => ring.every(({ x }) => x > 0 && x < 6e6));
    const middle = operatePath(strip.grid, left, { flipX: false, flipY: false, shift: 0 }).reduce(
      (sum, { y }) => sum + y,
      0,
    );
    expect(Math.abs(middle / left.length / 1e6)).toBeCloseTo(7 / 4, 3);
  });
});
