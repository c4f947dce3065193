/** Two pyramids whose tips a float32 file would make one, and a mesh that needs nothing. */
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { partCoincident } from "../../src/union/part-coincident.js";

/**
 * An hourglass lying down about x = 10, its two halves joined by a frame of their bases: one closed body whose two tips
 * face each other over a gap of a nanometre, which is below a step of float32 there.
 */
function tips(gap: number): Mesh {
  const square = (x: number) => [
    [x, -1, -1],
    [x, 1, -1],
    [x, 1, 1],
    [x, -1, 1],
  ];
  // Outer box, dented from both sides to the tips.
  const positions = [...square(9), ...square(11), [10 - gap / 2, 0, 0], [10 + gap / 2, 0, 0]].flat();
  const sides = [0, 1, 2, 3].flatMap((i) => {
    const j = (i + 1) % 4;
    return [i, j, 4 + j, i, 4 + j, 4 + i];
  });
  const dents = [0, 1, 2, 3].flatMap((i) => {
    const j = (i + 1) % 4;
    return [j, i, 8, 4 + i, 4 + j, 9];
  });
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from([...sides, ...dents]) };
}

/** The same turned inside out and set into a box: the tips close a gap instead of ending a wall. */
function hollowTips(gap: number): Mesh {
  const inner = tips(gap);
  const corners = [8, 12].flatMap((x) => [-2, 2].flatMap((y) => [-2, 2].map((z) => [x, y, z]))).flat();
  const box = [
    0, 1, 3, 0, 3, 2, 4, 6, 7, 4, 7, 5, 0, 4, 5, 0, 5, 1, 2, 3, 7, 2, 7, 6, 0, 2, 6, 0, 6, 4, 1, 5, 7, 1, 7, 3,
  ];
  return {
    positions: Float64Array.from([...corners, ...inner.positions]),
    triangles: Uint32Array.from([...box, ...Array.from(inner.triangles, (vertex) => vertex + 8).reverse()]),
  };
}

describe.each([
  ["a wall that ends in a point", tips, 1],
  ["a gap that closes in a point", hollowTips, 2],
] as const)("%s", (_, make, components) => {
  it("is closed before rounding alone, and in both forms once parted, with all its triangles", () => {
    const mesh = make(1e-9);
    const before = checkSolid(mesh, { components });
    expect([before.faults, before.float32.faults.map(({ code }) => code)]).toEqual([[], ["pinched-vertex"]]);
    const parted = partCoincident(mesh);
    expect(checkSolid(parted, { components }).closed).toBe(true);
    expect(parted.triangles).toEqual(mesh.triangles);
    const moved = parted.positions.map((value, i) => value - mesh.positions[i]);
    expect(Math.max(...moved.map(Math.abs))).toBeLessThan(1e-3);
    // The tips move apart from each other, not through each other.
    const [near, far] = [parted.positions.at(-6) as number, parted.positions.at(-3) as number];
    expect(far - near).toBeGreaterThan(3e-4);
    expect(signedVolume(parted)).toBeCloseTo(signedVolume(mesh), 2);
  });
});

it("leaves a mesh alone whose points are apart", () => {
  const mesh = tips(0.1);
  expect(partCoincident(mesh)).toBe(mesh);
});
