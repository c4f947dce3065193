// Covers: src/output/files/packed/*
import { build, type Mesh } from "annulet";
import { gunzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { predicted, unzigzag, zigzag } from "../../../../src/output/files/packed/grid.js";
import { packMesh } from "../../../../src/output/files/packed/pack-mesh.js";
import { unpackMesh } from "../../../../src/output/files/packed/unpack-mesh.js";

/** A mesh as a set: each triangle by its corners on a grid, from its least corner on, so that order does not matter. */
function asSet({ positions, triangles }: Mesh, step: number, origin: readonly number[]): readonly string[] {
  const nameOf = (vertex: number) =>
    [0, 1, 2].map((k) => Math.round((positions[3 * vertex + k] - origin[k]) / step)).join(" ");
  const names = Array.from({ length: triangles.length / 3 }, (_, t) => {
    const corners = [0, 1, 2].map((k) => nameOf(triangles[3 * t + k]));
    const least = corners.indexOf([...corners].sort()[0]);
    return [0, 1, 2].map((k) => corners[(least + k) % 3]).join(", ");
  });
  return names.sort();
}

/** Packs and unpacks; the mesh that comes back, held against the first. */
function thereAndBack(mesh: Mesh, tolerance = 0.01) {
  const { grid, bytes } = packMesh(mesh, tolerance);
  const back = unpackMesh(grid, gunzipSync(bytes));
  expect(asSet(back, grid.step, grid.origin)).toEqual(asSet(mesh, grid.step, grid.origin));
  expect(back.positions.length).toBe(mesh.positions.length);
  return { grid, bytes, back };
}

/** A tetrahedron with its first corner at a place, and others about 1 mm away. */
function tetrahedron(at: readonly [number, number, number], firstVertex = 0): Mesh {
  const [x, y, z] = at;
  const positions = new Float64Array([x, y, z, x + 1, y, z, x, y + 1.0004, z, x, y, z + 0.9]);
  const triangles = new Uint32Array([0, 2, 1, 0, 1, 3, 1, 2, 3, 0, 3, 2].map((vertex) => vertex + firstVertex));
  return { positions, triangles };
}

/** Several meshes as one. */
function together(meshes: readonly Mesh[]): Mesh {
  const positions = Float64Array.from(meshes.flatMap((mesh) => [...mesh.positions]));
  return { positions, triangles: Uint32Array.from(meshes.flatMap((mesh) => [...mesh.triangles])) };
}

describe("a packed mesh", () => {
  test("of a ring comes back as the same triangles, in few bytes", async () => {
    const { mesh } = await build(
      {
        annulet: 1,
        size: { system: "iso", value: 54 },
        tolerance: 0.05,
        profile: { width: 6, thickness: 2, outside: { form: "channel", rail: 0.9, depth: 0.6 } },
        pattern: { symmetry: "p1", regions: [{ path: "M 0.1 0.16 L 0.8 0.2 L 0.14 0.4 Z", mode: "pierced" }] },
        beads: [{ along: "rail", diameter: 0.4 }],
      },
      { detail: "draft" },
    );
    const { grid, bytes, back } = thereAndBack(mesh);
    expect(grid.step).toBeLessThanOrEqual(0.001);
    for (let i = 0; i < 3; i++) expect(Math.abs(back.positions[i] % 1)).toBeLessThan(1);
    // A triangle is 50 bytes of an STL.
    expect(bytes.length).toBeLessThan((50 * mesh.triangles.length) / 3 / 6);
    // The same mesh gives the same bytes.
    expect(packMesh(mesh, 0.01).bytes).toEqual(bytes);
  });

  test("of several pieces comes back whole, far from each other and from the origin", () => {
    const pieces = [
      [0, 0, 0],
      [5000, -7, 3],
      [-0.25, 900, 12],
    ] as const;
    thereAndBack(together(pieces.map((at, i) => tetrahedron(at, 4 * i))));
  });

  test("whose corners are in any order comes back", () => {
    const { positions } = tetrahedron([1, 2, 3]);
    const order = [2, 0, 3, 1];
    const moved = new Float64Array(12);
    for (const [from, to] of order.entries()) moved.set(positions.subarray(3 * from, 3 * from + 3), 3 * to);
    const triangles = new Uint32Array(
      [...tetrahedron([0, 0, 0]).triangles].reverse().map((vertex) => order[3 - vertex]),
    );
    thereAndBack({ positions: moved, triangles });
  });

  test("of a fine design has a finer grid than a micrometre", () => {
    expect(packMesh(tetrahedron([0, 0, 0]), 0.002).grid.step).toBeCloseTo(0.0002, 12);
  });

  test("is refused where it is not closed", () => {
    const { positions, triangles } = tetrahedron([0, 0, 0]);
    expect(() => packMesh({ positions, triangles: triangles.slice(0, 9) }, 0.01)).toThrow(/closed/);
  });

  test("is refused where its bytes are cut off, or are others", () => {
    const { grid, bytes } = packMesh(tetrahedron([0, 0, 0]), 0.01);
    const plain = gunzipSync(bytes);
    for (let length = 0; length < plain.length; length++) {
      const read = () => unpackMesh(grid, plain.subarray(0, length));
      // What is cut off shifts all that follows: other places, or a refusal, but never more than was asked for.
      try {
        expect(read().positions.length).toBe(12);
      } catch (error) {
        expect(error).toBeInstanceOf(RangeError);
      }
    }
    expect(() => unpackMesh({ ...grid, vertices: 3 }, plain)).toThrow(RangeError);
    expect(() => unpackMesh({ ...grid, triangles: 9 }, plain)).toThrow(RangeError);
  });
});

test("a parallelogram's fourth corner is expected where it is", () => {
  const places = [0, 0, 0, 4, 1, 0, 1, 5, 2];
  expect([0, 1, 2].map((axis) => predicted(places, 1, 2, 0, axis))).toEqual([5, 6, 2]);
  expect(predicted(places, -1, -1, -1, 0)).toBe(0);
});

test("zigzag numbers go there and back, small ones small", () => {
  for (const value of [0, -1, 1, -2, 2, 8_388_607, -8_388_608]) expect(unzigzag(zigzag(value))).toBe(value);
  expect([0, -1, 1, -2, 2].map(zigzag)).toEqual([0, 1, 2, 3, 4]);
});
