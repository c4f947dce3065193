import { describe, expect, it } from "vitest";
import { buildEdgeTable, nextEdge } from "../../src/mesh/edges.js";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { edgeShells, vertexShells } from "../../src/mesh/shells.js";
import { box, butterfly, soup, torus } from "../support/meshes.js";

describe("buildEdgeTable", () => {
  it("matches every directed edge of a closed mesh with its reverse; E = 3V on a torus", () => {
    const mesh = torus(3, 1, 12, 9);
    const { opposite, count, open, crowded } = buildEdgeTable(mesh);
    expect([count, open.length, crowded.length]).toEqual([3 * 12 * 9, 0, 0]);
    opposite.forEach((back, h) => {
      expect(opposite[back]).toBe(h);
      expect(mesh.triangles[back]).toBe(mesh.triangles[nextEdge(h)]);
      expect(mesh.triangles[nextEdge(back)]).toBe(mesh.triangles[h]);
    });
  });

  it("lists open edges and edges used twice in one direction, and skips what it is told to", () => {
    const cube = box();
    const skip = new Uint8Array(12);
    skip[5] = 1;
    expect(buildEdgeTable(cube, skip).open).toHaveLength(3);
    const doubled = { ...cube, triangles: new Uint32Array([...cube.triangles, ...cube.triangles.slice(0, 3)]) };
    expect(buildEdgeTable(doubled).crowded).toHaveLength(3);
  });
});

describe("shells", () => {
  it("counts by edges and by vertices", () => {
    const two = concatMeshes([box(), box([1, 1, 1], [5, 0, 0])]);
    expect(edgeShells(buildEdgeTable(two)).count).toBe(2);
    expect(vertexShells(two).count).toBe(2);
    const touching = butterfly();
    expect(edgeShells(buildEdgeTable(touching)).count).toBe(2);
    expect(vertexShells(touching).count).toBe(1);
    expect(edgeShells(buildEdgeTable(soup(box()))).count).toBe(12);
    expect(edgeShells(buildEdgeTable(soup(box()))).of).toEqual(Int32Array.from({ length: 12 }, (_, i) => i));
  });
});
