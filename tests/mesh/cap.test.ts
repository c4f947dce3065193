import { describe, expect, it } from "vitest";
import { before, type HalfSpace, after as past } from "../../src/base/math/half-space.js";
import { checkSolid } from "../../src/judge/gate.js";
import { capMesh } from "../../src/mesh/cap.js";
import { clipMesh } from "../../src/mesh/clip.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { reverseMesh } from "../../src/mesh/transform.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { failureOf } from "../support/failure-of.js";
import { box, torus } from "../support/meshes.js";

const cut = (mesh: Mesh, keep: HalfSpace) => {
  const { mesh: open, marks } = clipMesh(mesh, keep, { reach: 1e-12 });
  return capMesh(open, keep, (vertex) => marks[vertex] === 1);
};

/**
 * Volume of so many facets of a faceted torus: Pappus's theorem for the polygon's area m r² sin(2π/m) / 2 at its
 * centroid's radius R, with sin(2π/n) for the angle of each facet, since its cross-section changes linearly along it.
 */
const facets = (count: number, [radius, tube, around, across]: readonly number[]) =>
  ((across * tube ** 2 * Math.sin((2 * Math.PI) / across)) / 2) * radius * count * Math.sin((2 * Math.PI) / around);

describe("a mesh closed at a plane", () => {
  const shape = [5, 1.2, 24, 10] as const;
  const whole = torus(...shape);

  it("is a sector of a torus, between two planes through its axis (Pappus)", () => {
    expect(signedVolume(whole)).toBeCloseTo(facets(24, shape), 10);
    for (const count of [1, 5, 11]) {
      const angle = (count * 2 * Math.PI) / 24;
      const sector = cut(cut(whole, past(0)), before(angle));
      expect(checkSolid(sector)).toMatchObject({ closed: true, genus: 0 });
      expect(signedVolume(sector)).toBeCloseTo(facets(count, shape), 10);
    }
  });

  it("has a face for each of several rims", () => {
    const half = cut(whole, past(0.1));
    expect(checkSolid(half)).toMatchObject({ closed: true, genus: 0 });
    expect(signedVolume(half)).toBeCloseTo(facets(12, shape), 10);
  });

  it("has faces with holes where rims lie in each other", () => {
    const lower = cut(whole, { normal: [0, 0, 1], offset: 0 });
    expect(checkSolid(lower)).toMatchObject({ closed: true, genus: 1 });
    expect(signedVolume(lower)).toBeCloseTo(facets(24, shape) / 2, 10);
  });

  it("gives an island in a hole a face of its own", () => {
    // A box with a box-shaped void, in which a third box stands.
    const nested = concatMeshes([
      box([10, 10, 4], [-5, -5, 0]),
      reverseMesh(box([6, 6, 2], [-3, -3, 1])),
      box([2, 2, 1], [-1, -1, 1.5]),
    ]);
    const keep: HalfSpace = { normal: [0, 0, 1], offset: 1.75 };
    const part = cut(nested, keep);
    expect(signedVolume(part)).toBeCloseTo(175 - 27 + 1, 12);
    expect(checkSolid(part, { components: 2 }).closed).toBe(true);
  });

  it("is refused where rims touch in a point", () => {
    const touching = concatMeshes([box([1, 1, 2], [0, 0, -1]), box([1, 1, 2], [1, 1, -1])]);
    // The two boxes' edges between them become one vertex each.
    const one = (x: number, y: number, z: number) => x === 1 && y === 1 && z === 1;
    const { positions: p } = touching;
    const first = Array.from({ length: 16 }, (_, i) => i).filter((i) => one(p[3 * i], p[3 * i + 1], p[3 * i + 2]));
    const mesh = { positions: p, triangles: touching.triangles.map((v) => (v === first[1] ? first[0] : v)) };
    const lidless = { positions: p, triangles: mesh.triangles.filter((_, i) => !isLid(mesh, Math.floor(i / 3))) };
    const keep: HalfSpace = { normal: [0, 0, 1], offset: 1 };
    expect(failureOf(() => capMesh(lidless, keep, (v) => p[3 * v + 2] === 1)).code).toBe("border-tangled");
  });
});

function isLid({ positions, triangles }: Mesh, t: number): boolean {
  return [0, 1, 2].every((k) => positions[3 * triangles[3 * t + k] + 2] === 1);
}
