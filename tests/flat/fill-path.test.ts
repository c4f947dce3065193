import { describe, expect, it } from "vitest";
import { fillPath } from "../../src/flat/fill-path.js";
import type { GridPath } from "../../src/flat/grid.js";
import { ringArea } from "../../src/flat/polygons.js";
import { collector } from "./strips.js";

const square = (size: number, at = 0): GridPath => [
  { x: at, y: at },
  { x: at + size, y: at },
  { x: at + size, y: at + size },
  { x: at, y: at + size },
];

const filled = (paths: readonly GridPath[], fill: "nonzero" | "evenodd" | undefined) => {
  const { warn, warnings } = collector();
  const region = fillPath(paths, fill, "pattern.regions[0].path", warn);
  return { area: region.reduce((sum, ring) => sum + ringArea(ring), 0), rings: region.length, warnings };
};

describe("filling subpaths", () => {
  const [outer, inner] = [square(10_000), square(4000, 3000)];

  it("by nonzero covers what is gone round either way, unless one way takes back the other", () => {
    expect(filled([outer, inner], "nonzero")).toMatchObject({ area: 1e8, rings: 1, warnings: [] });
    expect(filled([outer, inner.toReversed()], undefined)).toMatchObject({ area: 1e8 - 1.6e7, rings: 2, warnings: [] });
  });

  it("by evenodd leaves out what is gone round twice, whichever way", () => {
    for (const hole of [inner, inner.toReversed()]) {
      expect(filled([outer, hole], "evenodd")).toMatchObject({ area: 1e8 - 1.6e7, rings: 2 });
    }
  });

  it("says where a path crosses itself, and by which rule it was filled", () => {
    const bowTie = [square(10_000)[0], square(10_000)[2], square(10_000)[1], square(10_000)[3]];
    const { area, rings, warnings } = filled([bowTie], "evenodd");
    expect([area, rings]).toEqual([expect.closeTo(5e7, -3), 2]);
    expect(warnings).toMatchObject([{ code: "path-crosses-itself", path: "pattern.regions[0].path" }]);
    expect(warnings[0].message).toContain("evenodd, leaving 2 outlines");
  });

  it("says nothing of two subpaths that cross each other, and nothing is drawn by none", () => {
    expect(filled([square(10_000), square(10_000, 5000)], "nonzero")).toMatchObject({ area: 1.75e8, warnings: [] });
    expect(filled([], "nonzero")).toMatchObject({ rings: 0, warnings: [] });
  });
});
