import fc from "fast-check";
import type { ManifoldToplevel, CrossSection as Section } from "manifold-3d";
import loadManifold from "manifold-3d";
import { beforeAll, describe, expect, it } from "vitest";
import { readArt } from "../../src/art/read-art.js";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import { takePeriod } from "../../src/flat/period.js";
import {
  cleanRegion,
  contains,
  type GridRegion,
  offset,
  ribbonAlong,
  ribbonAround,
  ringArea,
  simplify,
  subtract,
  unite,
} from "../../src/flat/polygons.js";
import { imagesOf, steps } from "../../src/flat/strip.js";
import { completeArt } from "../../src/relief/art.js";
import { areaOf, collector, drawing, region, SEED, stripOf } from "./strips.js";

/** Steps in a unit: rings drawn in thousandths. */
const UNIT = 1e6;

const ring = (...points: [number, number][]) => points.map(([x, y]) => ({ x: x * UNIT, y: y * UNIT }));
const area = (rings: GridRegion) => rings.reduce((sum, one) => sum + ringArea(one), 0) / UNIT ** 2;
const square = (x: number, y: number, side: number) => ring([x, y], [x + side, y], [x + side, y + side], [x, y + side]);

let wasm: ManifoldToplevel;
beforeAll(async () => {
  wasm = await loadManifold();
  wasm.setup();
});

/** The area that manifold-3d's own polygon algebra finds, in units squared. */
function referenceArea(rings: GridRegion, change: (section: Section) => Section = (section) => section): number {
  const outline = rings.map((one) => one.map(({ x, y }): [number, number] => [x / UNIT, y / UNIT]));
  const section = new wasm.CrossSection(outline, "NonZero");
  const changed = change(section);
  const result = changed.area();
  if (changed !== section) changed.delete();
  section.delete();
  return result;
}

describe("polygon algebra", () => {
  it("unites by both fill rules", () => {
    const nested = [square(0, 0, 4), square(1, 1, 2)];
    expect(area(unite(nested))).toBe(16);
    expect(area(unite(nested, "evenodd"))).toBe(12);
    expect(area(subtract([square(0, 0, 4)], [square(1, 1, 2)]))).toBe(12);
  });

  it("offsets by exact formulas: s² + 4sd + 4d² with mitres, + πd² with rounds", () => {
    const grown = (join: "miter" | "round") => area(offset([square(0, 0, 4)], 0.5 * UNIT, join, 1e-3 * UNIT));
    expect(grown("miter")).toBeCloseTo(25, 9);
    // The chords of four quarter rounds lose less than their length times the tolerance.
    expect(grown("round")).toBeLessThan(24 + Math.PI / 4);
    expect(grown("round")).toBeGreaterThan(24 + Math.PI / 4 - Math.PI * 1e-3);
    expect(area(offset([square(0, 0, 4)], -0.5 * UNIT, "miter", 1e-3 * UNIT))).toBeCloseTo(9, 9);
  });

  it("makes ribbons of exact width with each kind of end", () => {
    const along = (ends: "butt" | "round" | "square") =>
      area(ribbonAlong([ring([0, 0], [10, 0])], UNIT, "miter", ends, 1e-4 * UNIT));
    expect(along("butt")).toBeCloseTo(10, 9);
    expect(along("square")).toBeCloseTo(11, 9);
    expect(along("round")).toBeGreaterThan(10 + Math.PI / 4 - Math.PI * 1e-4);
    expect(along("round")).toBeLessThan(10 + Math.PI / 4);
  });

  it("makes a ribbon round a loop whichever way it runs", () => {
    const loop = square(0, 0, 4);
    expect(area(ribbonAround([loop], UNIT, "miter", 1e-3 * UNIT))).toBeCloseTo(16, 6);
    expect(area(ribbonAround([[...loop].reverse()], UNIT, "miter", 1e-3 * UNIT))).toBeCloseTo(16, 6);
    expect(area(unite(ribbonAround([loop, square(10, 0, 4).reverse()], UNIT, "round", 1e-3 * UNIT)))).toBeGreaterThan(
      31,
    );
  });

  it("parts tips and closes hairlines when it cleans", () => {
    const tips = unite([ring([0, 0], [2, 1], [0, 2]), ring([4, 0], [4, 2], [2, 1])]);
    const apart = cleanRegion(tips, 1e-3 * UNIT).filter((one) => ringArea(one) > 0);
    expect(apart).toHaveLength(2);
    const gap = [square(0, 0, 1), square(1.0005, 0, 1)];
    expect(cleanRegion(gap, 1e-3 * UNIT)).toHaveLength(1);
  });

  it("drops vertices on a straight line and knows inside from outside", () => {
    expect(simplify([ring([0, 0], [1, 0], [2, 0], [2, 2], [0, 2])], 10)[0]).toHaveLength(4);
    expect(contains(square(0, 0, 2), { x: UNIT, y: UNIT })).toBe(true);
    expect(contains(square(0, 0, 2), { x: 3 * UNIT, y: UNIT })).toBe(false);
  });

  it("agrees with another library on unions of images and on offsets of them", () => {
    fc.assert(
      fc.property(drawing, fc.constantFrom(...friezeGroups.map(({ name }) => name)), (path, symmetry) => {
        const strip = stripOf({ symmetry });
        const { closed } = readArt(strip, { path, unit: "tile" }, strip.artTolerance, "path");
        const images = imagesOf(strip, unite(closed)).map((image) =>
          image.flipped ? [...image.path].reverse() : image.path,
        );
        const united = unite(images);
        const close = (ours: number, theirs: number) =>
          expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-4 * theirs);
        close(area(united), referenceArea(images));
        const { region: plain } = completeArt(strip, region({ path }), "region", collector().warn);
        // Cleaning moves outlines by a hundredth of a millimetre at most, and only where parts nearly touch.
        const [cleaned, drawn] = [plain, united].map((rings) => areaOf(strip, takePeriod(strip, rings)));
        expect(Math.abs(cleaned - drawn)).toBeLessThan(0.02 * drawn);
        for (const distance of [0.05, -0.05]) {
          const ours = area(offset(united, steps(strip, distance), "miter", strip.arcTolerance));
          const theirs = referenceArea(united, (section) =>
            section.offset((distance * strip.grid.scale) / UNIT, "Miter", 4),
          );
          close(ours, theirs);
        }
      }),
      { seed: SEED, numRuns: 40 },
    );
  });
});
