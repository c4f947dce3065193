import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { triangleCount, vertexCount } from "../../src/mesh/mesh.js";
import { weldMesh } from "../../src/mesh/weld.js";
import { meshOf, soup, surfaceKey, torus } from "../support/meshes.js";

describe("weldMesh", () => {
  it("gives a soup its shared vertices back and leaves the surface alone", () => {
    const ring = torus(9, 1, 60, 20);
    const welded = weldMesh(soup(ring));
    expect(vertexCount(welded)).toBe(vertexCount(ring));
    expect(surfaceKey(welded)).toEqual(surfaceKey(ring));
  });

  it("takes −0 for 0 and nothing else for equal at tolerance 0", () => {
    const points = [
      [0, 0, 0],
      [1, 0, 0],
      [0, 1, 0],
      [-0, -0, 0],
      [0, -1, 0],
      [1 + 2 ** -52, 0, 0],
    ];
    const welded = weldMesh(
      meshOf(points, [
        [0, 1, 2],
        [3, 4, 5],
      ]),
    );
    expect(vertexCount(welded)).toBe(5);
    expect(Array.from(welded.positions).some((value) => Object.is(value, -0))).toBe(false);
  });

  it("drops triangles that collapse and vertices that nothing uses", () => {
    const points = [
      [9, 9, 9],
      [0, 0, 0],
      [1, 0, 0],
      [0, 1, 0],
      [1, 0.0005, 0],
    ];
    const mesh = meshOf(points, [
      [1, 2, 3],
      [2, 4, 3],
    ]);
    const welded = weldMesh(mesh, { tolerance: 0.001 });
    expect([vertexCount(welded), triangleCount(welded)]).toEqual([3, 1]);
    expect(triangleCount(weldMesh(mesh))).toBe(2);
  });

  it("moves no corner by more than the tolerance and leaves no two kept points within it", () => {
    const coordinate = fc.integer({ min: -40, max: 40 }).map((step) => step * 0.03);
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 3, maxLength: 120 }),
        fc.constantFrom(0.01, 0.031, 0.1, 0.7),
        (points, tolerance) => {
          const mesh = meshOf(
            points,
            points.map((_, i) => [i, (i + 1) % points.length, (i + 2) % points.length]),
          );
          const welded = weldMesh(mesh, { tolerance });
          const kept = Array.from({ length: vertexCount(welded) }, (_, i) => welded.positions.slice(3 * i, 3 * i + 3));
          const distance = (a: ArrayLike<number>, b: ArrayLike<number>) =>
            Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
          kept.forEach((a, i) => {
            for (const b of kept.slice(i + 1)) expect(distance(a, b)).toBeGreaterThan(tolerance);
            expect(points.some((b) => distance(a, b) === 0)).toBe(true);
          });
          const used = new Set(Array.from(welded.triangles));
          expect(used.size).toBe(kept.length);
          expect(weldMesh(mesh, { tolerance })).toEqual(welded);
        },
      ),
      { seed: 20261125 },
    );
  });

  it("refuses a tolerance that is no length", () => {
    for (const tolerance of [-1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => weldMesh(torus(2, 1, 6, 6), { tolerance })).toThrow(AnnuletError);
    }
  });
});
