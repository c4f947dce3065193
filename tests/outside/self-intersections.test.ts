// Across: the checker of self-intersections
/** The checker itself: it must find crossings where there are some. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { box, torus } from "../support/meshes.js";
import { type Checker, COMPILE_PATIENCE, compileChecker, hasCgal } from "../support/self-intersections.js";

describe.skipIf(!hasCgal)("CGAL", () => {
  let checker: Checker;
  beforeAll(() => {
    checker = compileChecker();
  }, COMPILE_PATIENCE);
  afterAll(() => checker?.remove());

  it("finds none in a torus, and some where a tube is wider than its ring or two boxes cross", () => {
    expect(checker.check(torus(9, 1, 60, 20))).toEqual({ count: 0, deepest: 0, places: [] });
    expect(checker.check(torus(1, 2, 60, 20)).count).toBeGreaterThan(0);
    const crossed = checker.check(concatMeshes([box(), box([1, 1, 1], [0.5, 0.4, 0.3])]));
    expect(crossed.count).toBeGreaterThan(5);
    expect(crossed.deepest).toBeCloseTo(0.4, 1);
    expect(crossed.places.length).toBe(10);
  });

  it("refuses a mesh with two sheets at one edge", () => {
    const cube = box();
    const doubled = { ...cube, triangles: Uint32Array.from([...cube.triangles, ...cube.triangles.slice(0, 3)]) };
    expect(() => checker.check(doubled)).toThrow("ended with 3");
  });
});
