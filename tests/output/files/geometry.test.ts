import { describe, expect, it } from "vitest";
import { toBufferGeometry } from "../../../src/output/files/geometry.js";
import { box, torus } from "../../support/meshes.js";

describe("toBufferGeometry", () => {
  it("is indexed, float32, with unit normals", () => {
    const geometry = toBufferGeometry(torus(9, 1, 60, 20));
    expect(geometry.index?.array).toBeInstanceOf(Uint32Array);
    expect(geometry.index?.count).toBe(60 * 20 * 2 * 3);
    const { position, normal } = geometry.attributes;
    expect(position.array).toBeInstanceOf(Float32Array);
    expect(position.count).toBe(60 * 20);
    for (let i = 0; i < normal.count; i++) {
      expect(Math.hypot(normal.getX(i), normal.getY(i), normal.getZ(i))).toBeCloseTo(1, 6);
    }
    geometry.computeBoundingBox();
    expect(geometry.boundingBox?.max.x).toBe(10);
  });

  it("keeps creases sharp by default and smooths them when told to", () => {
    expect(toBufferGeometry(box()).attributes.position.count).toBe(24);
    expect(toBufferGeometry(box(), { crease: Math.PI }).attributes.position.count).toBe(8);
    expect(toBufferGeometry(torus(9, 1, 60, 8), { crease: 0 }).attributes.position.count).toBeGreaterThan(60 * 8);
  });
});
