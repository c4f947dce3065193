import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ringArea, unite } from "../../src/flat/polygons.js";
import { dropSpikes } from "../../src/flat/spikes.js";
import { SEED } from "./strips.js";

const ring = (...points: [number, number][]) => points.map(([x, y]) => ({ x, y }));

describe("spikes", () => {
  it("of a level edge that goes a hair too far do not turn the hole of a cup into metal", () => {
    const outer = ring([0, 0], [0, -12_000], [14_000, -12_000], [14_000, 0]);
    const inner = ring([1124, -4000], [3000, -10_000], [11_000, -10_000], [12_800, -4000], [1123, -4000]);
    const area = unite([outer, inner], "evenodd").reduce((sum, part) => sum + ringArea(part), 0);
    expect(area).toBeCloseTo(168e6 - 59.028e6, -4);
  });

  it("are dropped wherever they stand, and what has none is left as it is", () => {
    const square = ring([0, 0], [10, 0], [10, 10], [0, 10]);
    expect(dropSpikes(square)).toBe(square);
    expect(dropSpikes(ring([0, 0], [20, 0], [10, 0], [10, 10], [0, 10]))).toEqual(square);
    expect(dropSpikes(ring([0, 0], [10, 0], [10, 10], [0, 10], [0, 20], [0, 10]))).toHaveLength(4);
    expect(dropSpikes(ring([0, 0], [10, 0], [5, 0]))).toEqual([]);
    expect(dropSpikes(ring([0, 0], [10, 10], [0, 0], [10, 10]))).toEqual([]);
  });

  it("change no area", () => {
    const point = fc.record({ x: fc.integer({ min: -5, max: 5 }), y: fc.integer({ min: -5, max: 5 }) });
    fc.assert(
      fc.property(fc.array(point, { minLength: 3, maxLength: 12 }), (points) => {
        const left = dropSpikes(points);
        expect(left.length === 0 ? 0 : ringArea(left)).toBe(ringArea(points));
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
});
