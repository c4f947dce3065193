import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { friezeGroups } from "../../src/base/frieze/symmetry.js";
import { fromGrid, gridFor, operatePath, shiftPath, toGrid } from "../../src/flat/grid.js";
import { SEED } from "./strips.js";

const width = fc.double({ min: 0.3, max: 80, noNaN: true });
const point = fc.tuple(fc.double({ min: -90, max: 90, noNaN: true }), fc.double({ min: -30, max: 30, noNaN: true }));

describe("the grid", () => {
  it("divides a tile into a multiple of four steps and gives points back within a step", () => {
    fc.assert(
      fc.property(width, point, (tileWidth, [u, v]) => {
        const grid = gridFor(tileWidth);
        expect(grid.tile % 4).toBe(0);
        expect(grid.tile / grid.scale).toBeCloseTo(tileWidth, 12);
        const [[back, up]] = fromGrid(grid, toGrid(grid, [[u, v]]));
        expect(Math.abs(back - u)).toBeLessThan(0.6e-6);
        expect(Math.abs(up - v)).toBeLessThan(0.6e-6);
      }),
      { seed: SEED },
    );
  });

  it("drops points that fall together, and only those", () => {
    const grid = gridFor(4);
    expect(
      toGrid(grid, [
        [0, 0],
        [1e-8, 0],
        [1, 0],
        [1, 0],
        [0, 0],
      ]),
    ).toHaveLength(3);
  });

  it("comes back to whole tiles when an operation is done twice", () => {
    const grid = gridFor(7.053);
    const path = [
      { x: 17, y: -5 },
      { x: 1234567, y: 890 },
    ];
    for (const { operations } of friezeGroups) {
      for (const operation of operations) {
        const twice = operatePath(grid, operatePath(grid, path, operation), operation);
        const tiles = (twice[0].x - path[0].x) / grid.tile;
        expect(Number.isInteger(tiles)).toBe(true);
        expect(shiftPath(twice, -tiles * grid.tile, 0)).toEqual(path);
      }
    }
  });
});
