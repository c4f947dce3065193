import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { addImage } from "../../src/mesh/add-image.js";
import { clipMesh } from "../../src/mesh/clip.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { box, torus } from "../support/meshes.js";

const BIT = 2;
const below = (x: number, y: number, z: number) => [x, y, -z] as const;

describe("a mesh and its mirror image", () => {
  const open = clipMesh(torus(5, 1.5, 16, 9), { normal: [0, 0, -1], offset: 0 }, { reach: 1e-9, bit: BIT });
  const { whole, imageOf } = addImage(open, BIT, below);

  it("are closed together, of the whole volume", () => {
    expect(checkSolid(whole.mesh)).toMatchObject({ closed: true, genus: 1 });
    // Pappus for a polygon of 9 sides turned in 16 facets: each sweeps its area times sin(2π/16) of its centroid's radius.
    const area = (9 * 1.5 ** 2 * Math.sin((2 * Math.PI) / 9)) / 2;
    expect(signedVolume(whole.mesh)).toBeCloseTo(area * 5 * 16 * Math.sin((2 * Math.PI) / 16), 10);
  });

  it("share the points on the plane, and no others", () => {
    const on = open.marks.filter((mark) => (mark & BIT) !== 0).length;
    expect(on).toBeGreaterThan(0);
    expect(whole.marks).toHaveLength(2 * open.marks.length - on);
    open.marks.forEach((mark, vertex) => {
      const at = (v: number) => [...whole.mesh.positions.subarray(3 * v, 3 * v + 3)];
      if ((mark & BIT) !== 0) expect(imageOf[vertex]).toBe(vertex);
      else expect(at(imageOf[vertex])).toEqual(below(...(at(vertex) as [number, number, number])));
    });
  });

  it("carry the same marks", () => {
    const cut = clipMesh(box([2, 2, 2], [0, 0, -1]), { normal: [0, 0, -1], offset: 0 }, { reach: 0, bit: BIT });
    const marks = cut.marks.map((mark, v) => mark | (cut.mesh.positions[3 * v] === 2 ? 4 : 0));
    const both = addImage({ mesh: cut.mesh, marks }, BIT, below).whole;
    both.marks.forEach((mark, v) => {
      expect((mark & 4) !== 0).toBe(both.mesh.positions[3 * v] === 2);
    });
  });
});
