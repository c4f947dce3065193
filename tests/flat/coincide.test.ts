import { describe, expect, it } from "vitest";
import { boxed, coincide, liesOn } from "../../src/flat/coincide.js";
import type { GridPath } from "../../src/flat/grid.js";

const line = (...points: [number, number][]): GridPath => points.map(([x, y]) => ({ x, y }));
const same = (a: GridPath, b: GridPath, closed: boolean) => coincide(boxed(a), boxed(b), closed, 1);

describe("coinciding lines", () => {
  const triangle = line([0, 0], [100, 0], [100, 100]);

  it("are the same wherever they begin and whichever way they run", () => {
    expect(same(triangle, line([100, 0], [100, 100], [0, 0]), true)).toBe(true);
    expect(same(triangle, [...triangle].reverse(), true)).toBe(true);
    expect(same(triangle, line([0, 0], [50, 0], [100, 1], [100, 100]), true)).toBe(true);
  });

  it("are not the same for filling the same box", () => {
    expect(same(triangle, line([0, 0], [100, 0], [0, 100]), true)).toBe(false);
    expect(same(triangle, line([0, 0], [100, 0], [100, 100], [0, 100]), true)).toBe(false);
    expect(same(line([0, 0], [100, 100]), line([0, 100], [100, 0]), false)).toBe(false);
  });

  it("differ where one is closed by a side that the other lacks", () => {
    expect(liesOn(line([50, 50]), triangle, true, 1)).toBe(true);
    expect(liesOn(line([50, 50]), triangle, false, 1)).toBe(false);
  });
});
