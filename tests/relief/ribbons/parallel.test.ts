import { describe, expect, it } from "vitest";
import type { GridPath } from "../../../src/flat/grid.js";
import { clipAlong, ringArea } from "../../../src/flat/polygons.js";
import { completeArt } from "../../../src/relief/art.js";
import { parallelTo } from "../../../src/relief/ribbons/parallel.js";
import { areaOf, circle, collector, failureOf, region, type StripInput, stripOf } from "../../flat/strips.js";

const line = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x, y }));
const open = (...points: [number, number][]) => ({ points: line(...points), closed: false });

function complete(spec: object, input: StripInput = {}) {
  const strip = stripOf(input);
  const { codes, warn } = collector();
  const art = completeArt(strip, region({ unit: "mm", ...spec }), "r", warn);
  const inside = clipAlong(art.region, 0, strip.grid.tile, 4 * strip.halfSeat);
  return { strip, art, codes, area: areaOf(strip, inside), parts: inside.filter((ring) => ringArea(ring) > 0).length };
}

describe("a line beside a line", () => {
  it("cuts inner corners and mitres outer ones", () => {
    const corner = open([0, 0], [100, 0], [100, 100]);
    expect(parallelTo(corner, 10, "miter", 0.1)?.points).toEqual(line([0, 10], [90, 10], [90, 100]));
    expect(parallelTo(corner, -10, "miter", 0.1)?.points).toEqual(
      line([0, -10], [100, -10], [110, -10], [110, 0], [110, 100]),
    );
  });

  it("keeps its distance from an arc, on either side", () => {
    const arc = Array.from({ length: 91 }, (_, i): [number, number] => [
      1e6 * Math.cos((i * Math.PI) / 90),
      1e6 * Math.sin((i * Math.PI) / 90),
    ]);
    for (const distance of [4e5, -4e5]) {
      const points = parallelTo(open(...arc), distance, "round", 100)?.points ?? [];
      for (const { x, y } of points) expect(Math.abs(Math.hypot(x, y) - (1e6 - distance))).toBeLessThan(400);
    }
  });

  it("trims away what folds over where arcs meet in a corner", () => {
    // Two quarters of circles of 1 mm: 0.5 mm outside of them the circles of 1.5 mm meet above the corner.
    const quarter = (cx: number) =>
      Array.from({ length: 61 }, (_, i): [number, number] => [
        cx - 1e6 * Math.cos((i * Math.PI) / 120 + Math.PI / 4),
        1e6 * Math.sin((i * Math.PI) / 120 + Math.PI / 4),
      ]);
    const chain = open(...quarter(0), ...quarter(Math.SQRT2 * 1e6).slice(1));
    const points = parallelTo(chain, 5e5, "round", 100)?.points ?? [];
    const near = points.filter(({ x }) => Math.abs(x - Math.SQRT1_2 * 1e6) < 3e5);
    const lowest = near.reduce((a, b) => (b.y < a.y ? b : a));
    expect(Math.abs(lowest.x - Math.SQRT1_2 * 1e6)).toBeLessThan(2e3);
    expect(Math.abs(lowest.y - Math.sqrt(1.5 ** 2 - 0.5) * 1e6)).toBeLessThan(2e3);
  });

  it("goes round a loop from wherever it begins", () => {
    const square = { points: line([0, 0], [100, 0], [100, 100], [0, 100]), closed: true };
    const inner = parallelTo(square, 10, "miter", 0.1);
    expect(Math.abs(ringArea(inner?.points ?? []))).toBe(6400);
    expect(Math.abs(ringArea(parallelTo(square, -10, "miter", 0.1)?.points ?? []))).toBe(14400);
  });

  it("is none where the line turns too tightly", () => {
    expect(parallelTo(open([0, 0], [100, 0], [100, 5], [0, 5]), 20, "miter", 0.1)).toBeUndefined();
  });
});

describe("ribbons side by side", () => {
  const copies = { count: 3, gap: 0.2 };

  it("lie along a line, centred on it, each with its centre line", () => {
    const { art, area, parts, strip } = complete({ path: "M 1 0.5 H 5", ribbon: { width: 0.3, copies } });
    expect(area).toBeCloseTo(3 * 0.3 * 4, 4);
    expect(parts).toBe(3);
    const heights = new Set(art.centre.map(({ points: [{ y }] }) => Math.round((y / strip.grid.scale) * 1e3)));
    expect([...heights].sort((a, b) => a - b)).toEqual([0, 500, 1000]);
  });

  it("each end as the ribbon does", () => {
    const { area } = complete({ path: "M 1 0 H 5", ribbon: { width: 0.3, copies, ends: "round" } });
    expect(Math.abs(area - 3 * (0.3 * 4 + Math.PI * 0.15 ** 2))).toBeLessThan(0.015);
  });

  // Rings about a circle of 1.8 mm: π (R² − r²) each.
  it.each([
    ["inside", [1.8, 1.3, 0.8]],
    ["outside", [2.1, 2.6, 3.1]],
    ["centre", [1.45, 1.95, 2.45]],
  ] as const)("lie one behind the other %s a border", (side, outers) => {
    const path = circle(4, 0, 1.8);
    const wanted = outers.reduce((sum, outer) => sum + Math.PI * (outer ** 2 - (outer - 0.3) ** 2), 0);
    const { area, art, codes } = complete({ path, ribbon: { width: 0.3, copies, side } }, { tileWidth: 8, aspect: 1 });
    expect(Math.abs(area - wanted)).toBeLessThan(0.15);
    expect(art.centre.length % 3).toBe(0);
    expect(codes).toEqual([]);
  });

  it("that have no room are refused with what has", () => {
    const many = { path: "M 2 -1 H 4 V 1 H 2 Z", ribbon: { width: 0.3, copies } };
    const filled = failureOf(() => complete(many));
    expect([filled.code, filled.path]).toEqual(["ribbon-too-wide", "r.ribbon.copies"]);
    expect(filled.allowed).toMatch(/at most (0\.99\d|1) mm/);
    const tight = { path: "M 1 0 H 5 V 0.2 H 1", ribbon: { width: 0.3, copies } };
    const folded = failureOf(() => complete(tight));
    expect([folded.code, folded.path]).toEqual(["copies-too-wide", "r.ribbon.copies"]);
    const most = Number(/at most ([\d.]+) mm/.exec(folded.allowed ?? "")?.[1]);
    expect(most).toBeCloseTo(0.1, 2);
    const fits = { count: 2, gap: 2 * most - 0.05 - 1e-3 };
    expect(() => complete({ ...tight, ribbon: { width: 0.05, copies: fits } })).not.toThrow();
  });
});
