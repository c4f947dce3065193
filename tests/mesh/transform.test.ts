import { mat4 } from "gl-matrix";
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { reverseMesh, transformMesh } from "../../src/mesh/transform.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { box, torus } from "../support/meshes.js";

const identity = (): mat4 => [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

describe("transformMesh", () => {
  it("moves points as gl-matrix does and scales the volume by the determinant", () => {
    const map = mat4.translate(identity(), mat4.scale(identity(), identity(), [2, 3, 4]), [1, 0, 0]);
    const moved = transformMesh(box(), map);
    expect(Array.from(moved.positions.slice(0, 3))).toEqual([2, 0, 0]);
    expect(Array.from(moved.positions.slice(-3))).toEqual([4, 3, 4]);
    expect(signedVolume(moved)).toBeCloseTo(24, 12);
  });

  it("keeps a mirrored mesh facing outward", () => {
    const ring = torus(3, 1, 20, 10);
    const mirrored = transformMesh(ring, mat4.scale(identity(), identity(), [1, 1, -1]));
    expect(signedVolume(mirrored)).toBeCloseTo(signedVolume(ring), 10);
    expect(signedVolume(reverseMesh(ring))).toBeCloseTo(-signedVolume(ring), 10);
  });

  it("refuses maps that flatten, project or are not finite", () => {
    const flat = mat4.scale(identity(), identity(), [1, 1, 0]);
    const projective = identity();
    projective[3] = 0.1;
    const infinite = identity();
    infinite[12] = Number.NaN;
    for (const map of [flat, projective, infinite]) expect(() => transformMesh(box(), map)).toThrow(AnnuletError);
  });

  it("leaves its input alone", () => {
    const mesh = box();
    transformMesh(mesh, mat4.scale(identity(), identity(), [-2, 1, 1]));
    expect(mesh).toEqual(box());
  });
});
