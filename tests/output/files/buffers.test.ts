import { describe, expect, it } from "vitest";
import { toBuffers } from "../../../src/output/files/buffers.js";
import { box, torus } from "../../support/meshes.js";

describe("toBuffers", () => {
  it("has float32 positions and unit normals, which on a torus point away from its ring of centres", () => {
    const { positions, normals, triangles } = toBuffers(torus(9, 1, 120, 60));
    expect(positions).toBeInstanceOf(Float32Array);
    expect(normals).toBeInstanceOf(Float32Array);
    expect(triangles).toBeInstanceOf(Uint32Array);
    expect([positions.length, normals.length, triangles.length]).toEqual([21600, 21600, 43200]);
    for (let i = 0; i < positions.length; i += 3) {
      const [x, y, z] = positions.subarray(i, i + 3);
      const round = Math.hypot(x, y);
      const out = [x - (9 * x) / round, y - (9 * y) / round, z];
      for (const k of [0, 1, 2]) expect(Math.abs(normals[i + k] - out[k])).toBeLessThan(0.005);
    }
  });

  it("keeps creases sharp by default, smooths or facets where told to", () => {
    const corners = (crease?: number) => toBuffers(box(), { crease }).positions.length / 3;
    expect(corners()).toBe(24);
    expect(corners(Math.PI)).toBe(8);
    expect(corners(0)).toBe(24);
    expect(toBuffers(torus(9, 1, 60, 8), { crease: 0 }).positions.length / 3).toBeGreaterThan(60 * 8);
  });

  it("refuses what is no mesh", () => {
    const mesh = { positions: new Float64Array(9), triangles: Uint32Array.of(0, 1, 7) };
    expect(() => toBuffers(mesh)).toThrow(expect.objectContaining({ code: "mesh-malformed" }));
  });
});
