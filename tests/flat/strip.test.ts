import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import { operatePath, shiftPath } from "../../src/flat/grid.js";
import { clipAlong, ringArea } from "../../src/flat/polygons.js";
import { clearRing, flatPoint, imagesOf, steps } from "../../src/flat/strip.js";
import { completeArt } from "../../src/relief/art.js";
import { areaOf, collector, differenceArea, drawing, region, SEED, stripOf } from "./strips.js";

describe("the strip", () => {
  it("stacks rows about the seat's middle", () => {
    const { rowMiddles, rowStep, halfSeat } = stripOf({ rows: 3, aspect: 0.5 });
    expect(rowMiddles).toEqual([-rowStep, 0, rowStep]);
    expect(halfSeat).toBe(1.5 * rowStep);
    const [low, high] = stripOf({ rows: 2 }).rowMiddles;
    expect(low).toBe(-high);
  });

  it("converts lengths and points", () => {
    const strip = stripOf({ tileWidth: 7.0536 });
    const [u, v] = flatPoint(strip, { x: steps(strip, 1.5), y: steps(strip, -0.25) });
    expect(u).toBeCloseTo(1.5, 12);
    expect(v).toBeCloseTo(-0.25, 12);
  });

  it("works every image that reaches the complete stretch, and only those", () => {
    const strip = stripOf({ symmetry: "p1" });
    const dot = [
      { x: 0, y: 0 },
      { x: strip.grid.tile / 4, y: 5 },
    ];
    const firsts = imagesOf(strip, [dot]).map(({ path }) => path[0].x / strip.grid.tile);
    expect(firsts).toEqual([-2, -1, 0, 1, 2, 3]);
    const wide = imagesOf(strip, [dot], { reach: strip.grid.tile }).map(({ path }) => path[0].x / strip.grid.tile);
    expect(wide).toEqual([-3, -2, -1, 0, 1, 2, 3, 4]);
    expect(clearRing(strip, dot)).toBe(true);
    expect(clearRing(strip, shiftPath(dot, 2 * strip.grid.tile, 0))).toBe(false);
  });
});

describe.each(friezeGroups.map((group) => [group.name, group] as const))(
  "a drawing completed by %s",
  (symmetry, group) => {
    it("is the same under each operation and under a translation by a tile", () => {
      fc.assert(
        fc.property(drawing, fc.constantFrom(1, 2), (path, rows) => {
          const strip = stripOf({ symmetry, rows });
          const { tile } = strip.grid;
          const { region: whole } = completeArt(strip, region({ path }), "region", collector().warn);
          const window = (rings: typeof whole, from = 0) => clipAlong(rings, from, from + tile, 2 * strip.halfSeat);
          const here = window(whole);
          const size = areaOf(strip, here);
          expect(size).toBeGreaterThan(0);
          const moved = (by: number) => whole.map((ring) => shiftPath(ring, by, 0));
          // Simplifying drops vertices within 1 µm of their neighbours' line, not the same ones in every image.
          const slack = 1e-3 * size + 1e-3;
          expect(differenceArea(strip, here, window(moved(tile)))).toBeLessThan(slack);
          for (const operation of group.operations) {
            const flips = operation.flipX !== operation.flipY;
            const images = whole.map((ring) => {
              const image = operatePath(strip.grid, ring, operation);
              return flips ? image.reverse() : image;
            });
            expect(images.reduce((sum, ring) => sum + ringArea(ring), 0)).toBeGreaterThan(0);
            if (rows === 1 || !operation.flipY || operation.shift === 0) {
              expect(differenceArea(strip, here, window(images))).toBeLessThan(slack);
            }
          }
        }),
        { seed: SEED, numRuns: 12 },
      );
    });
  },
);
