import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import { finish } from "../../src/base/pausing.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { Faces } from "../../src/solids/faces.js";

const square: Point3[] = [
  [0, 0, 0],
  [2, 0, 0],
  [2, 2, 0],
  [0, 2, 0],
];
const at =
  (h: number) =>
  ([u, v]: Point3): Point3 => [u, v, h];

/** Twice the area that triangles cover seen from above, negative where they face down. */
function facing(faces: Faces): number {
  const { positions: p, triangles } = finish(faces.mesh());
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[t + k]);
    sum += (p[b] - p[a]) * (p[c + 1] - p[a + 1]) - (p[b + 1] - p[a + 1]) * (p[c] - p[a]);
  }
  return sum;
}

describe("faces that are collected", () => {
  it("look up, or down where they are turned", () => {
    for (const [turned, twice] of [
      [false, 8],
      [true, -8],
    ] as const) {
      const faces = new Faces(undefined);
      finish(faces.polygon([square], at(1), turned));
      expect(facing(faces)).toBe(twice);
    }
  });

  it("make walls that face away from what they surround, and into its holes", () => {
    const faces = new Faces(undefined);
    const hole = square.map(([u, v]): Point3 => [0.5 + u / 4, 0.5 + v / 4, 0]).toReversed();
    finish(faces.walls([square, hole], at(0), at(3)));
    finish(faces.polygon([square, hole], at(3), false));
    finish(faces.polygon([square, hole], at(0), true));
    expect(signedVolume(finish(faces.mesh()))).toBeCloseTo((4 - 0.25) * 3, 12);
  });

  it("meet in common corners, as no two places are welded that are not one", () => {
    const faces = new Faces(undefined);
    finish(faces.polygon([square], at(0), true));
    finish(faces.polygon([square], at(1e-12), false));
    expect(finish(faces.mesh()).positions).toHaveLength(3 * 8);
  });

  it("leave out walls along the seam alone: not those that only begin there, nor elsewhere", () => {
    const walls = (seam: readonly [number, number] | undefined, ring: readonly Point3[]) => {
      const faces = new Faces(seam);
      finish(faces.walls([ring], at(0), at(1)));
      return finish(faces.mesh()).triangles.length / 3;
    };
    expect(walls(undefined, square)).toBe(8);
    expect(walls([0, 2], square)).toBe(4);
    expect(walls([0, 5], square)).toBe(6);
    const tilted: Point3[] = [square[0], square[1], [2.5, 2, 0], [-0.5, 2, 0]];
    expect(walls([0, 2], tilted)).toBe(8);
  });
});
