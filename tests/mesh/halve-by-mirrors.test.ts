import { describe, expect, it } from "vitest";
import { addImage } from "../../src/mesh/add-image.js";
import { halveByMirrors } from "../../src/mesh/halve-by-mirrors.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { box } from "../support/meshes.js";

/** Triangles of a box. */
const BOX = 12;

/** A box off all planes. */
const part = () => box([1, 1.1, 1.2], [3, 2, 0.5]);

type Image = (x: number, y: number, z: number) => readonly [number, number, number];

const withImage = (mesh: Mesh, image: Image) =>
  addImage({ mesh, marks: new Uint8Array(mesh.positions.length / 3) }, 1, image).whole.mesh;

const over: Image = (x, y, z) => [x, y, -z];
/** In the plane through the z axis at some angle. */
const round = (angle: number): Image => {
  const [cos, sin] = [Math.cos(2 * angle), Math.sin(2 * angle)];
  return (x, y, z) => [x * cos + y * sin, x * sin - y * cos, z];
};

/** The mesh with one number changed. */
function nudged(mesh: Mesh, at: number, by: number): Mesh {
  const positions = mesh.positions.slice();
  positions[at] += by;
  return { positions, triangles: mesh.triangles };
}

describe("what stands for a mesh by mirrors", () => {
  it("is half of a part and its image, a quarter of that and its image", () => {
    expect(halveByMirrors(part(), BOX)).toEqual({ first: BOX, images: 1 });
    for (const angle of [0.1, 0.7, Math.PI / 3]) {
      const half = withImage(part(), round(angle));
      expect(halveByMirrors(half, 2 * BOX)).toEqual({ first: BOX, images: 2 });
      expect(halveByMirrors(withImage(half, over), 4 * BOX)).toEqual({ first: BOX, images: 4 });
    }
    expect(halveByMirrors(withImage(part(), over), 2 * BOX)).toEqual({ first: BOX, images: 2 });
  });

  it("is the whole where one corner of the image is off by 2 nm, at its first and its last vertex", () => {
    const half = withImage(part(), round(0.4));
    const last = half.positions.length - 1;
    for (const at of [last, last - 1, last - 2, half.positions.length / 2]) {
      expect(halveByMirrors(nudged(half, at, 2e-6), 2 * BOX)).toEqual({ first: 2 * BOX, images: 1 });
    }
  });

  it("is the whole where the plane does not map the axis onto itself, or does not go through the origin", () => {
    const slanted: Image = (x, y, z) => [x, -z, -y];
    const beside: Image = (x, y, z) => [x, y, 1 - z];
    for (const image of [slanted, beside]) {
      expect(halveByMirrors(withImage(part(), image), 2 * BOX).images).toBe(1);
    }
  });

  it("is the whole where the second half is a copy, a turned one, or the same triangles in other order", () => {
    const copy = part();
    const turned = box([1, 1.1, 1.2], [-4, -3.1, 0.5]);
    for (const other of [copy, turned]) {
      expect(halveByMirrors(concatMeshes([part(), other]), 2 * BOX).images).toBe(1);
    }
    const half = withImage(part(), over);
    const swapped = half.triangles.slice();
    swapped.set(half.triangles.subarray(half.triangles.length - 3), half.triangles.length - 6);
    swapped.set(
      half.triangles.subarray(half.triangles.length - 6, half.triangles.length - 3),
      half.triangles.length - 3,
    );
    expect(halveByMirrors({ positions: half.positions, triangles: swapped }, 2 * BOX).images).toBe(1);
  });

  it("asks of the first triangles alone, and of none", () => {
    const half = withImage(part(), over);
    const more = concatMeshes([half, box([1, 1, 1], [20, 0, 0])]);
    expect(halveByMirrors(more, 2 * BOX)).toEqual({ first: BOX, images: 2 });
    expect(halveByMirrors(more, 0)).toEqual({ first: 0, images: 1 });
  });
});
