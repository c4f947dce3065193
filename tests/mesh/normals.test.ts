import { describe, expect, it } from "vitest";
import { vertexCount } from "../../src/mesh/mesh.js";
import { creasedNormals } from "../../src/mesh/normals.js";
import { box, sphere } from "../support/meshes.js";

describe("creasedNormals", () => {
  it("keeps a cube's edges sharp below 90° and smooths them above", () => {
    const sharp = creasedNormals(box(), Math.PI / 6);
    expect(sharp.positions.length / 3).toBe(24);
    for (let i = 0; i < sharp.normals.length; i += 3) {
      expect([...sharp.normals.slice(i, i + 3)].map(Math.abs).sort()).toEqual([0, 0, 1]);
    }
    const smooth = creasedNormals(box(), Math.PI);
    expect(smooth.positions.length / 3).toBe(8);
    // At a cube's corner the three faces have equal angles, so the normal is the diagonal.
    for (const part of smooth.normals) expect(Math.abs(part)).toBeCloseTo(1 / Math.sqrt(3), 6);
  });

  it("splits a fold just below its crease and joins it just above, also where a face has no area", () => {
    for (const turn of [1e-7, 0.1, Math.PI / 6, Math.PI / 2, 2, 3]) {
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      // Two faces along the x axis, the second turned, and a third without area on the second's far edge.
      const positions = Float64Array.of(0, 0, 0, 1, 0, 0, 0, -1, 0, 1, c, s, 2, c, s);
      const fold = { positions, triangles: Uint32Array.of(0, 2, 1, 0, 1, 3, 3, 4, 3) };
      const corners = (crease: number) => creasedNormals(fold, crease).positions.length / 3;
      expect(corners(turn * (1 + 1e-6)) - corners(turn * (1 - 1e-6))).toBe(-2);
    }
  });

  it("points a fine sphere's normals along its radii", () => {
    const { positions, normals } = creasedNormals(sphere(2, 40, 80), Math.PI / 6);
    expect(positions.length / 3).toBe(vertexCount(sphere(2, 40, 80)));
    for (let i = 0; i < positions.length; i += 3) {
      const dot =
        (positions[i] * normals[i] + positions[i + 1] * normals[i + 1] + positions[i + 2] * normals[i + 2]) / 2;
      expect(dot).toBeGreaterThan(0.9999);
    }
  });
});
