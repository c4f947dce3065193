// Across: the checker of self-intersections, and our own beside it
/** The checker itself: it must find crossings where there are some, and ours must find the same. */
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { findCrossings } from "../../src/mesh/crossings.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { SEED } from "../band/profile/specs.js";
import { box, torus } from "../support/meshes.js";
import { type Checker, COMPILE_PATIENCE, compileChecker, hasCgal } from "../support/self-intersections.js";

describe.skipIf(!hasCgal)("CGAL", () => {
  let checker: Checker;
  beforeAll(() => {
    checker = compileChecker();
  }, COMPILE_PATIENCE);

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

  it("finds as many pairs as we do, as deep, of random solids in each other, on a grid or turned off it", async () => {
    let crossing = 0;
    const place = fc.tuple(
      fc.integer({ min: -6, max: 6 }),
      fc.integer({ min: -6, max: 6 }),
      fc.integer({ min: -6, max: 6 }),
    );
    const solid = fc.record({ place, kind: fc.constantFrom("box", "torus"), size: fc.integer({ min: 1, max: 4 }) });
    await fc.assert(
      fc.asyncProperty(
        fc.array(solid, { minLength: 2, maxLength: 5 }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        fc.boolean(),
        async (solids, angle, turned) => {
          const [cos, sin] = turned ? [Math.cos(angle), Math.sin(angle)] : [1, 0];
          const meshes: Mesh[] = solids.map(({ place: [x, y, z], kind, size }) => {
            const mesh = kind === "box" ? box([size, size, size], [x, y, z]) : torus(size, size / 3, 9, 6);
            const [dx, dy, dz] = kind === "box" ? [0, 0, 0] : [x, y, z];
            return transformMesh(mesh, [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, dx, dy, dz, 1]);
          });
          const mesh = concatMeshes(meshes);
          const [own, theirs] = [await findCrossings(mesh), checker.check(mesh)];
          expect(own.count).toBe(theirs.count);
          // Theirs is printed with three digits.
          expect(own.deepest).toBeCloseTo(theirs.deepest, 2);
          if (own.count > 0) crossing++;
        },
      ),
      { seed: SEED, numRuns: 60 },
    );
    expect(crossing).toBeGreaterThan(10);
  });
});
