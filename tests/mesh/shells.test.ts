import { describe, expect, it } from "vitest";
import { buildEdgeTable } from "../../src/mesh/edges.js";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { edgeShells, findRoot, singletons, unite, vertexShells } from "../../src/mesh/shells.js";
import { box, meshOf, torus } from "../support/meshes.js";

describe("pieces of a mesh", () => {
  it("are numbered in order of first appearance, one for each body", () => {
    const mesh = concatMeshes([box(), torus(5, 1, 6, 4), box([1, 1, 1], [9, 9, 9])]);
    const expected = [...Array(12).fill(0), ...Array(48).fill(1), ...Array(12).fill(2)];
    expect(vertexShells(mesh)).toEqual({ of: Int32Array.from(expected), count: 3 });
    expect(edgeShells(buildEdgeTable(mesh))).toEqual({ of: Int32Array.from(expected), count: 3 });
  });

  it("that share a vertex alone are one by vertices and two by edges", () => {
    const bowTie = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
        [-1, 0, 0],
        [0, -1, 0],
      ],
      [
        [0, 1, 2],
        [0, 3, 4],
      ],
    );
    expect(vertexShells(bowTie).count).toBe(1);
    expect(edgeShells(buildEdgeTable(bowTie)).count).toBe(2);
  });

  it("hang together at an edge that three triangles use, two of them in one direction", () => {
    const book = meshOf(
      [
        [0, 0, 0],
        [0, 0, 1],
        [1, 0, 0],
        [0, 1, 0],
        [-1, 0, 0],
      ],
      [
        [0, 1, 2],
        [0, 1, 3],
        [1, 0, 4],
      ],
    );
    expect(edgeShells(buildEdgeTable(book)).count).toBe(1);
  });

  it("leave out what is to be skipped, and part where it joined them", () => {
    const row = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
        [1, 1, 0],
        [0, 2, 0],
      ],
      [
        [0, 1, 2],
        [1, 3, 2],
        [2, 3, 4],
      ],
    );
    const skip = Uint8Array.from([0, 1, 0]);
    expect(edgeShells(buildEdgeTable(row)).count).toBe(1);
    expect(edgeShells(buildEdgeTable(row, skip), skip)).toEqual({ of: Int32Array.from([0, -1, 1]), count: 2 });
  });
});

describe("sets of numbers", () => {
  it("are found by their lowest member, however they were put together", () => {
    const parent = singletons(6);
    unite(parent, 5, 4);
    unite(parent, 3, 4);
    unite(parent, 1, 0);
    expect([0, 1, 2, 3, 4, 5].map((item) => findRoot(parent, item))).toEqual([0, 0, 2, 3, 3, 3]);
    unite(parent, 5, 1);
    expect([0, 1, 2, 3, 4, 5].map((item) => findRoot(parent, item))).toEqual([0, 0, 2, 0, 0, 0]);
  });
});
