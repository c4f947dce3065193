import { describe, expect, it } from "vitest";
import { ringBox } from "../../src/flat/box.js";
import type { GridPath } from "../../src/flat/grid.js";
import { lengthen } from "../../src/flat/lengthen.js";
import { clipWithin, type GridRegion } from "../../src/flat/polygons.js";
import { copiesAlong, type Strip } from "../../src/flat/strip.js";
import { areaOf, differenceArea, stripOf } from "./strips.js";

const box = ({ grid: { scale } }: Strip, left: number, right: number, low: number, high: number): GridPath =>
  [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
  ].map(([x, y]) => ({ x: Math.round(x * scale), y: Math.round(y * scale) }));

/** A band of 1 mm along the whole strip with a tooth of 2 × 1 mm on each tile. */
function comb(strip: Strip): GridRegion {
  const [low, high] = strip.complete.map((x) => x / strip.grid.scale);
  const teeth = copiesAlong(strip, box(strip, 1, 3, 0.4, 1.5));
  return [box(strip, low, high, -0.5, 0.5), ...teeth];
}

/** Of a region what lies between two places, mm. */
const between = (strip: Strip, region: GridRegion, left: number, right: number) => {
  const { scale } = strip.grid;
  return clipWithin(region, { left: left * scale, right: right * scale, low: -1e12, high: 1e12 }, 0);
};

describe("a longer strip", () => {
  const strip = stripOf();

  it("reaches so far beyond one period, and is the same in each of its periods", () => {
    const margin = 30 * strip.grid.scale;
    const long = lengthen(strip, comb(strip), margin);
    const edges = long.map(ringBox);
    const [left, right] = [Math.min(...edges.map((edge) => edge.left)), Math.max(...edges.map((edge) => edge.right))];
    expect(left).toBeLessThanOrEqual(-margin);
    expect(right).toBeGreaterThanOrEqual(strip.period + margin);
    // A period of 6 mm of the band and what of a tooth stands above it.
    for (const start of [-24, -6, 0, 0.7, 24]) {
      expect(areaOf(strip, between(strip, long, start, start + 6))).toBeCloseTo(6 + 2, 3);
    }
  });

  it("is what was there where that was long before", () => {
    const region = comb(strip);
    const long = lengthen(strip, region, 30 * strip.grid.scale);
    expect(differenceArea(strip, between(strip, long, 0, 6), between(strip, region, 0, 6))).toBeLessThan(1e-4);
  });

  it("is left as it is where it is long enough, or does not go round, or holds nothing", () => {
    const region = comb(strip);
    expect(lengthen(strip, region, 0.5 * strip.grid.tile)).toBe(region);
    expect(lengthen(strip, [], 1e9)).toEqual([]);
    const ended = stripOf({ cover: 120, repeats: 3 });
    const alone = [box(ended, 1, 2, 0, 1)];
    expect(lengthen(ended, alone, 1e9)).toBe(alone);
  });
});
