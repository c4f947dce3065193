import { describe, expect, it } from "vitest";
import { creasedNormals } from "../../../src/mesh/normals.js";
import { cornerNormals, facesOf } from "../../../src/output/picture/corner-normals.js";
import { box, meshOf, sphere } from "../../support/meshes.js";

const all = (triangles: number) => new Uint8Array(triangles).fill(1);

describe("corner normals", () => {
  it("agree with those that are made for viewers, where the surface is smooth", () => {
    const ball = sphere(3, 30, 60);
    const own = cornerNormals(ball, facesOf(ball), { seen: all(ball.triangles.length / 3), crease: Math.PI / 6 });
    const { triangles, normals } = creasedNormals(ball, Math.PI / 6);
    triangles.forEach((vertex, corner) => {
      const dot = [0, 1, 2].reduce((sum, k) => sum + own[3 * corner + k] * normals[3 * vertex + k], 0);
      expect(dot).toBeGreaterThan(0.99999);
    });
  });

  it("keep a cube's edges sharp below 90° and lie on its diagonals above", () => {
    const sharp = cornerNormals(box(), facesOf(box()), { seen: all(12), crease: Math.PI / 4 });
    for (let i = 0; i < sharp.length; i += 3)
      expect([...sharp.subarray(i, i + 3)].map(Math.abs).sort()).toEqual([0, 0, 1]);
    const smooth = cornerNormals(box(), facesOf(box()), { seen: all(12), crease: Math.PI });
    for (const part of smooth) expect(Math.abs(part)).toBeCloseTo(1 / Math.sqrt(3), 4);
  });

  it("leaves out what nobody sees, and lets slivers borrow from their neighbours", () => {
    const mesh = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [1, 1, 0],
        [0, 1, 0],
        [0.5, -1e-9, 1e-9],
      ],
      [
        [0, 1, 2],
        [0, 2, 3],
        [0, 4, 1],
      ],
    );
    const normals = cornerNormals(mesh, facesOf(mesh), {
      seen: Uint8Array.from([1, 0, 1]),
      crease: Math.PI / 6,
    });
    expect([...normals.subarray(9, 18)]).toEqual(Array(9).fill(0));
    // The sliver's own normal lies anywhere; at the corners that it shares it takes the plane's.
    for (const corner of [0, 6]) expect(normals[18 + corner + 2]).toBeCloseTo(1, 6);
  });
});
