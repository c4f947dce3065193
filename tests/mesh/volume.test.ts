import { describe, expect, it } from "vitest";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { reverseMesh } from "../../src/mesh/transform.js";
import { signedVolume, volumesByLabel } from "../../src/mesh/volume.js";
import { box, meshOf, torus } from "../support/meshes.js";

describe("the signed volume", () => {
  it("of a box is abc, of a tetrahedron a sixth of that", () => {
    expect(signedVolume(box([2, 3, 5]))).toBeCloseTo(30, 12);
    const corner = meshOf(
      [
        [0, 0, 0],
        [2, 0, 0],
        [0, 3, 0],
        [0, 0, 5],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [0, 3, 2],
        [1, 2, 3],
      ],
    );
    expect(signedVolume(corner)).toBeCloseTo(5, 12);
  });

  it("is negative inside out, and that of a void is taken off", () => {
    const room = concatMeshes([box([4, 4, 4]), reverseMesh(box([1, 2, 3], [1, 1, 0.5]))]);
    expect(signedVolume(reverseMesh(box([2, 3, 5])))).toBeCloseTo(-30, 12);
    expect(signedVolume(room)).toBeCloseTo(58, 12);
  });

  it("loses no digits far from the origin", () => {
    // Corners there are rounded to 1e-10 mm; from the origin itself 6 digits would be lost.
    expect(signedVolume(box([1, 1, 1], [1e6, -1e6, 1e6]))).toBeCloseTo(1, 8);
  });

  it("of a torus is 2π² R r² times what both polygons lack (n / 2π sin 2π / n each)", () => {
    const share = (n: number) => (n / (2 * Math.PI)) * Math.sin((2 * Math.PI) / n);
    expect(signedVolume(torus(5, 1, 64, 32))).toBeCloseTo(10 * Math.PI ** 2 * share(64) * share(32), 9);
  });
});

describe("volumes of shells", () => {
  it("are each one's own, and leave out what has no label", () => {
    const three = concatMeshes([box([1, 1, 1]), box([2, 2, 2], [50, 0, 0]), box([3, 3, 3], [0, 90, 0])]);
    const labels = Int32Array.from([...Array(12).fill(1), ...Array(12).fill(-1), ...Array(12).fill(0)]);
    const [third, first] = volumesByLabel(three, labels, 2);
    expect([third, first]).toEqual([expect.closeTo(27, 9), expect.closeTo(1, 9)]);
  });
});
