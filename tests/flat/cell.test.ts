import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import {
  bandAcross,
  chooseCut,
  cutAcross,
  cutToCell,
  type LevelPolygon,
  type LevelRing,
  nestRings,
} from "../../src/flat/cell.js";
import { clipAlong, type GridRegion } from "../../src/flat/polygons.js";
import { completeArt } from "../../src/relief/art.js";
import { areaOf, collector, drawing, failureOf, region, SEED, stripOf } from "./strips.js";

const ring = (...points: [number, number][]): LevelRing => points.map(([x, y]) => ({ x, y, h: 1 }));
const levels = (rings: GridRegion, h = 1): LevelRing[] => rings.map((one) => one.map(({ x, y }) => ({ x, y, h })));
const gridRings = (polygons: readonly LevelPolygon[]) =>
  polygons.flatMap(({ outer, holes }) => [outer, ...holes]).map((one) => one.map(({ x, y }) => ({ x, y })));

/** y of the vertices on one side of the cell, ascending. */
function sideOf(polygons: readonly LevelPolygon[], x: number): number[] {
  return polygons
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .flatMap((one) => one.filter((point) => point.x === x).map(({ y }) => y))
    .sort((a, b) => a - b);
}

describe("cutting to the cell", () => {
  it("cuts random completed drawings to one period whose sides match", () => {
    fc.assert(
      fc.property(drawing, fc.constantFrom(...friezeGroups.map(({ name }) => name)), (path, symmetry) => {
        const strip = stripOf({ symmetry });
        const { tile } = strip.grid;
        const { region: whole } = completeArt(strip, region({ path }), "region", collector().warn);
        const rings = levels(whole);
        const left = chooseCut(rings, tile);
        const cell = cutToCell(rings, left, tile);
        const cut = gridRings(cell);
        expect(areaOf(strip, cut)).toBeCloseTo(
          areaOf(strip, clipAlong(whole, left, left + tile, 4 * strip.halfSeat)),
          4,
        );
        expect(sideOf(cell, left)).toEqual(sideOf(cell, left + tile));
        for (const { x } of cut.flat()) expect(x >= left && x <= left + tile).toBe(true);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("keeps holes, whole and cut", () => {
    const period = 100;
    const frame = (dx: number) => [
      ring([dx + 10, 0], [dx + 70, 0], [dx + 70, 60], [dx + 10, 60]),
      ring([dx + 30, 20], [dx + 30, 40], [dx + 50, 40], [dx + 50, 20]),
    ];
    const rings = [-100, 0, 100].flatMap(frame);
    const whole = cutToCell(rings, 0, period);
    expect(whole.map(({ holes }) => holes.length)).toEqual([1]);
    const through = cutToCell(rings, 40, period);
    expect(through.map(({ holes }) => holes.length)).toEqual([0, 0]);
    const area = gridRings(through).reduce(
      (sum, one) =>
        sum + one.reduce((s, p, i) => s + p.x * one[(i + 1) % one.length].y - one[(i + 1) % one.length].x * p.y, 0) / 2,
      0,
    );
    expect(area).toBe(60 * 60 - 20 * 20);
  });

  it("goes on through a strand that has no end", () => {
    const cell = cutToCell([ring([-300, 0], [400, 0], [400, 10], [-300, 10])], 17, 100);
    expect(cell).toHaveLength(1);
    expect(cell[0].outer).toHaveLength(4);
  });

  it("says where two ends of a tile do not match", () => {
    const slanted = [ring([-300_000, 0], [400_000, 700_000], [400_000, 710_000], [-300_000, 10_000])];
    expect(failureOf(() => cutToCell(slanted, 17, 100_000)).code).toBe("seam-mismatch");
  });

  it("nests islands in holes in parts", () => {
    const square = (low: number, high: number) => ring([low, low], [high, low], [high, high], [low, high]);
    const hole = (low: number, high: number) => [...square(low, high)].reverse();
    const polygons = nestRings([square(0, 100), hole(10, 90), square(20, 80), hole(30, 70), square(200, 210)]);
    expect(polygons.map(({ holes }) => holes.length).sort()).toEqual([0, 1, 1]);
  });

  it("cuts where fewest lines cross", () => {
    const left = chooseCut(
      [ring([0, 0], [70, 0], [70, 10], [0, 10]), ring([100, 0], [170, 0], [170, 10], [100, 10])],
      100,
    );
    expect(left).toBeGreaterThan(70);
    expect(left).toBeLessThan(100);
  });
});

describe("contours cut off across", () => {
  const square = (low: number, high: number, h: number) => [
    { x: low, y: low, h },
    { x: high, y: low, h },
    { x: high, y: high, h },
    { x: low, y: high, h },
  ];
  const [foot, crest] = [square(-100, 100, 0), square(-60, 60, 0.5)];

  it("end on the edges, the outermost with a vertex wherever another meets them", () => {
    const [outer, inner] = cutAcross([[foot], [crest]], 50);
    expect(inner.flat().every(({ y }) => Math.abs(y) <= 50)).toBe(true);
    const from = outer[0].findIndex(({ x, y }) => x === 100 && y === 50);
    const round = [...outer[0].slice(from), ...outer[0].slice(0, from)];
    expect(round.filter(({ y }) => y === 50).map(({ x, h }) => [x, h])).toEqual([
      [100, 0],
      [60, 0.5],
      [-60, 0.5],
      [-100, 0],
    ]);
  });

  it("leave between two of them what lies at both sides of the inner one", () => {
    const rings = bandAcross([foot], [crest], 50);
    const area = rings.reduce((sum, ring) => {
      return ring.reduce((s, a, i) => {
        const b = ring[(i + 1) % ring.length];
        return s + (a.x * b.y - b.x * a.y) / 2;
      }, sum);
    }, 0);
    expect(area).toBe(2 * 40 * 100);
  });

  it("are as they are where they do not reach so far, or only touch the edge", () => {
    expect(cutAcross([[foot], [crest]], 100)).toEqual([[foot], [crest]]);
    expect(cutAcross([[square(200, 300, 0)]], 100)).toEqual([[]]);
  });
});
