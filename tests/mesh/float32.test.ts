import { describe, expect, it } from "vitest";
import { roundToFloat32 } from "../../src/mesh/float32.js";
import { triangleCount, vertexCount } from "../../src/mesh/mesh.js";
import { box, meshOf, soup } from "../support/meshes.js";

describe("roundToFloat32", () => {
  it("rounds, merges and keeps every triangle, collapsed ones too", () => {
    const mesh = meshOf(
      [
        [0, 0, 0.1],
        [1, 0, 0],
        [1 + 1e-12, 0, -0],
        [0, 1, 0],
      ],
      [
        [0, 1, 2],
        [1, 3, 2],
      ],
    );
    const rounded = roundToFloat32(mesh);
    expect([vertexCount(rounded), triangleCount(rounded)]).toEqual([3, 2]);
    expect(Array.from(rounded.triangles)).toEqual([0, 1, 1, 1, 2, 1]);
    expect(rounded.positions[2]).toBe(Math.fround(0.1));
  });

  it("merges a soup and lets indices that name nothing through", () => {
    expect(vertexCount(roundToFloat32(soup(box())))).toBe(8);
    expect(roundToFloat32(meshOf([[0, 0, 0]], [[0, 0, 7]])).triangles[2]).toBe(7);
  });
});
