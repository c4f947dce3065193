import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { requireSound, requireTriples } from "../../src/mesh/sound.js";
import { failureOf } from "../support/failure-of.js";
import { box, meshOf } from "../support/meshes.js";

const bare = (positions: readonly number[], triangles: readonly number[]): Mesh => ({
  positions: Float64Array.from(positions),
  triangles: Uint32Array.from(triangles),
});

describe("a mesh that can be worked with", () => {
  it("is any whose triples are whole, coordinates finite and indices in range; an empty one too", () => {
    expect(() => requireSound(box())).not.toThrow();
    expect(() => requireSound(meshOf([], []))).not.toThrow();
  });

  it.each([
    ["positions", bare([0, 0, 0, 1], []), 4],
    ["triangles", bare([0, 0, 0], [0, 0]), 2],
  ])("has its %s in threes", (field, mesh, value) => {
    for (const check of [requireTriples, requireSound]) {
      expect(failureOf(() => check(mesh))).toMatchObject({ code: "mesh-malformed", value });
      expect(failureOf(() => check(mesh)).message).toContain(field);
    }
  });

  it("has no coordinate that is no finite number; the first is named", () => {
    const error = failureOf(() => requireSound(bare([0, 0, 0, 0, Number.NaN, 0, Number.POSITIVE_INFINITY, 0, 0], [])));
    expect(error.message).toContain("coordinate y of vertex 1 ");
    expect(failureOf(() => requireSound(bare([0, 0, Number.NEGATIVE_INFINITY], []))).message).toContain(
      "z of vertex 0 ",
    );
  });

  it("names no vertex that is not there; the last one is", () => {
    const points = [0, 0, 0, 1, 0, 0, 0, 1, 0];
    expect(() => requireSound(bare(points, [0, 1, 2]))).not.toThrow();
    const error = failureOf(() => requireSound(bare(points, [0, 1, 2, 2, 1, 3])));
    expect(error).toMatchObject({ value: 3, allowed: "0 to 2" });
    expect(error.message).toContain("triangle 1 ");
  });
});
