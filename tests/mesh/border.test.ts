import { describe, expect, it } from "vitest";
import { borderLoops } from "../../src/mesh/border.js";
import { clipMesh } from "../../src/mesh/clip.js";
import { nextEdge } from "../../src/mesh/edges.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { failureOf } from "../support/failure-of.js";
import { box, butterfly, meshOf, torus } from "../support/meshes.js";

const z = ({ positions }: Mesh, vertex: number) => positions[3 * vertex + 2];

/** A box without lid and floor. */
const tube = (() => {
  const { positions, triangles } = box();
  const level = (t: number) =>
    [0, 1, 2].every((k) => positions[3 * triangles[3 * t + k] + 2] === positions[3 * triangles[3 * t] + 2]);
  return { positions, triangles: triangles.filter((_, i) => !level(Math.floor(i / 3))) };
})();

describe("the border of a mesh", () => {
  it("is none where it is closed", () => {
    expect(borderLoops(torus(3, 1, 9, 7))).toEqual([]);
  });

  it("is a loop at each opening, each edge after the one that ends where it begins", () => {
    const loops = borderLoops(tube);
    expect(loops.map((loop) => loop.length)).toEqual([4, 4]);
    for (const loop of loops) {
      loop.forEach((edge, i) => {
        expect(tube.triangles[nextEdge(edge)]).toBe(tube.triangles[loop[(i + 1) % loop.length]]);
      });
      expect(new Set(loop.map((edge) => z(tube, tube.triangles[edge]))).size).toBe(1);
    }
  });

  it("has the surface on its left: round a lone triangle it runs as that does", () => {
    const lone = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
      ],
      [[0, 1, 2]],
    );
    expect(borderLoops(lone)).toEqual([[0, 1, 2]]);
  });

  it("leaves out what runs through other vertices", () => {
    expect(borderLoops(tube, (vertex) => z(tube, vertex) === 1)).toHaveLength(1);
    expect(borderLoops(tube, () => false)).toEqual([]);
  });

  it("has two loops where a torus is cut through its axis", () => {
    const { mesh } = clipMesh(torus(3, 1, 9, 7), { normal: [0, 1, 0], offset: 0.05 }, { reach: 0 });
    expect(borderLoops(mesh)).toHaveLength(2);
  });

  it.each([
    ["loops touch in a vertex", butterfly()],
    [
      "an edge has three triangles",
      meshOf(
        [
          [0, 0, 0],
          [1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
          [0, -1, 0],
        ],
        [
          [0, 1, 2],
          [0, 1, 3],
          [1, 0, 4],
        ],
      ),
    ],
  ])("is refused where %s", (_, mesh) => {
    expect(failureOf(() => borderLoops(mesh)).code).toBe("border-tangled");
  });

  it("is refused where what is left of it does not close", () => {
    expect(failureOf(() => borderLoops(tube, (v) => tube.positions[3 * v] === 0 || z(tube, v) === 1)).code).toBe(
      "border-tangled",
    );
  });
});
