import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { isInPieces, liesClear } from "../../src/judge/loose.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { box, torus } from "../support/meshes.js";

const ring = torus(9, 1, 48, 12);
const cube = (x: number): Mesh => transformMesh(box([1, 1, 1]), [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, -0.5, -0.5, 1]);
const GAP = 0.01;

describe("a ring in pieces", () => {
  it("is told from one whose pieces are not sound, and from one with a hollow", () => {
    expect(isInPieces(checkSolid(ring))).toBe(false);
    const loose = concatMeshes([ring, cube(12)]);
    expect(isInPieces(checkSolid(loose))).toBe(true);
    expect(isInPieces(checkSolid({ ...loose, triangles: loose.triangles.slice(3) }))).toBe(false);
    const { positions, triangles } = torus(9, 0.5, 48, 12);
    const hollow = concatMeshes([ring, { positions, triangles: triangles.toReversed() }]);
    expect(isInPieces(checkSolid(hollow))).toBe(false);
  });

  it("has pieces that lie clear, each of them, or too near to tell", () => {
    expect(liesClear(concatMeshes([ring, cube(12), cube(-13)]), GAP)).toBe(true);
    expect(liesClear(concatMeshes([ring, cube(10 + 1.5 * GAP)]), GAP)).toBe(true);
    expect(liesClear(concatMeshes([ring, cube(12), cube(10 + GAP / 2)]), GAP)).toBe(false);
    // They cross, or touch in a point.
    expect(liesClear(concatMeshes([ring, cube(9.5)]), GAP)).toBe(false);
    expect(liesClear(concatMeshes([ring, cube(10)]), GAP)).toBe(false);
  });

  it("may be the smaller by volume: the piece with the most triangles is what others lie clear of", () => {
    expect(liesClear(concatMeshes([cube(12), ring]), GAP)).toBe(true);
    expect(liesClear(concatMeshes([cube(10 + GAP / 2), ring]), GAP)).toBe(false);
  });
});
