import { describe, expect, it } from "vitest";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { strew } from "../../../src/output/picture/strew.js";
import { box, meshOf, sphere } from "../../support/meshes.js";

interface Strewn {
  readonly at: readonly number[];
  readonly normal: readonly number[];
  readonly area: number;
}

function strewn(mesh: Mesh, spacing: number): Strewn[] {
  const all: Strewn[] = [];
  strew(mesh, spacing, (x, y, z, nx, ny, nz, area) => all.push({ at: [x, y, z], normal: [nx, ny, nz], area }));
  return all;
}

describe("points strewn over a mesh", () => {
  it("stand for its whole surface: a box's 2 (ab + bc + ca)", () => {
    for (const spacing of [10, 1, 0.3]) {
      const sum = strewn(box([2, 3, 5]), spacing).reduce((total, { area }) => total + area, 0);
      expect(sum).toBeCloseTo(62, 9);
    }
  });

  it("lie on it and look outward: their flow through it is three times its volume (divergence theorem)", () => {
    const flow = strewn(box([2, 3, 5], [10, -4, 1]), 0.4).reduce(
      (total, { at, normal, area }) => total + area * at.reduce((dot, x, k) => dot + x * normal[k], 0),
      0,
    );
    expect(flow).toBeCloseTo(90, 8);
    for (const { at, normal } of strewn(sphere(3, 20, 40), 0.5)) {
      expect(Math.hypot(...normal)).toBeCloseTo(1, 12);
      expect(at.reduce((dot, x, k) => dot + x * normal[k], 0)).toBeGreaterThan(2.9);
    }
  });

  it("leave no place of a triangle further than their spacing from the next", () => {
    const corners = [
      [0, 0, 0],
      [4, 0, 0],
      [1, 3, 0],
    ];
    const points = strewn(meshOf(corners, [[0, 1, 2]]), 0.5);
    for (let i = 0; i <= 20; i++) {
      for (let k = 0; k <= 20 - i; k++) {
        const place = [0, 1].map((axis) => (corners[1][axis] * i + corners[2][axis] * k) / 20);
        const nearest = Math.min(...points.map(({ at }) => Math.hypot(at[0] - place[0], at[1] - place[1])));
        expect(nearest).toBeLessThan(0.5);
      }
    }
  });

  it("are one for a small triangle, its middle, and none for one without area", () => {
    const tiny = meshOf(
      [
        [0, 0, 0],
        [0.3, 0, 0],
        [0, 0.3, 0],
      ],
      [[0, 1, 2]],
    );
    expect(strewn(tiny, 1)).toEqual([
      {
        at: [expect.closeTo(0.1, 12), expect.closeTo(0.1, 12), 0],
        normal: [0, 0, expect.closeTo(1, 12)],
        area: expect.closeTo(0.045, 12),
      },
    ]);
    expect(
      strewn(
        meshOf(
          [
            [0, 0, 0],
            [1, 0, 0],
            [2, 0, 0],
          ],
          [[0, 1, 2]],
        ),
        1,
      ),
    ).toEqual([]);
  });
});
