// Covers: src/mesh/fan.ts
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { decimate } from "../../src/mesh/decimate.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { reverseMesh, transformMesh } from "../../src/mesh/transform.js";
import { weldMesh } from "../../src/mesh/weld.js";
import { farthest } from "../support/farthest.js";
import { box, meshOf, revolve, sphere, torus } from "../support/meshes.js";

/** Rounding of the places that are asked, mm. */
const ROUNDING = 1e-9;

/** A box, each side in n × n squares of two triangles. */
function gridBox(n: number): Mesh {
  const sheet: number[][] = [];
  const corner = (i: number, j: number) => [i / n, j / n, 0];
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      sheet.push(
        corner(i, j),
        corner(i, j + 1),
        corner(i + 1, j + 1),
        corner(i, j),
        corner(i + 1, j + 1),
        corner(i + 1, j),
      );
    }
  }
  const floor = meshOf(
    sheet,
    Array.from({ length: 2 * n * n }, (_, t) => [3 * t, 3 * t + 1, 3 * t + 2]),
  );
  const sides = [
    [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1],
    [0, 1, 0, 0, 1, 0, 0, 0, 0, 0, -1, 0, 0, 0, 1, 1],
    [0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0, 1],
    [0, 0, 1, 0, 0, 1, 0, 0, -1, 0, 0, 0, 1, 0, 0, 1],
    [0, 0, 1, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1],
    [1, 0, 0, 0, 0, 0, 1, 0, 0, -1, 0, 0, 0, 1, 0, 1],
  ] as const;
  return weldMesh(concatMeshes(sides.map((side) => transformMesh(floor, side))), { tolerance: 1e-9 });
}

async function expectWithin(mesh: Mesh, deviation: number) {
  const before = checkSolid(mesh, { components: checkSolid(mesh).components });
  const { mesh: fewer, bound } = await decimate(mesh, { deviation });
  const after = checkSolid(fewer, { components: before.components });
  expect(after.faults).toEqual([]);
  expect(after).toMatchObject({
    closed: true,
    genus: before.genus,
    components: before.components,
    voids: before.voids,
  });
  expect(bound).toBeLessThanOrEqual(deviation);
  expect(farthest(mesh, fewer)).toBeLessThanOrEqual(bound + ROUNDING);
  expect(farthest(fewer, mesh)).toBeLessThanOrEqual(bound + ROUNDING);
  return { fewer, bound, before, after };
}

describe("decimation", () => {
  it("leaves the 12 triangles of a box of many, its corners and its volume", async () => {
    const grid = gridBox(7);
    expect(checkSolid(grid)).toMatchObject({ closed: true, triangles: 12 * 49 });
    const { fewer, bound, after } = await expectWithin(grid, 0.01);
    expect([after.triangles, after.vertices]).toEqual([12, 8]);
    expect(bound).toBeLessThan(1e-12);
    expect(after.volume).toBeCloseTo(1, 12);
    expect([...fewer.positions].every((value) => value === 0 || value === 1)).toBe(true);
  });

  it("takes more out of a torus the farther it may go, always within its bound", async () => {
    const fine = torus(9, 1, 120, 30);
    const counts: number[] = [];
    for (const deviation of [1e-3, 1e-2, 1e-1]) counts.push((await expectWithin(fine, deviation)).after.triangles);
    expect(counts[0]).toBeLessThanOrEqual(fine.triangles.length / 3);
    expect(counts[1]).toBeLessThan(counts[0]);
    expect(counts[2]).toBeLessThan(counts[1]);
    // A torus within a tenth of a millimetre takes some hundreds of triangles, not none.
    expect(counts[2]).toBeGreaterThan(100);
  });

  it("keeps sharp edges where they are", async () => {
    // A band with a groove a tenth of a millimetre deep, ten times the deviation.
    const outline = [
      [-3, 8],
      [3, 8],
      [3, 10],
      [1, 10],
      [1, 9.9],
      [-1, 9.9],
      [-1, 10],
      [-3, 10],
    ] as const;
    const ring = revolve([...outline].reverse(), 400);
    const { fewer, after } = await expectWithin(ring, 0.01);
    expect(after.triangles).toBeLessThan(ring.triangles.length / 6);
    const heights = new Set([...fewer.positions].filter((_, i) => i % 3 === 2));
    expect([...heights].sort((a, b) => a - b)).toEqual([-3, -1, 1, 3]);
  });

  it("keeps shells and hollows, however small", async () => {
    const small = sphere(0.002, 6, 8);
    const solids = concatMeshes([
      sphere(5, 20, 30),
      reverseMesh(sphere(2, 12, 16)),
      transformMesh(small, [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 9, 0, 0, 1]),
    ]);
    const { after } = await expectWithin(solids, 0.05);
    expect(after).toMatchObject({ components: 3, voids: 1 });
  });

  it("does not fold what is as small as can be", async () => {
    const tetrahedron = meshOf(
      [
        [0, 0, 0],
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [1, 2, 3],
        [2, 0, 3],
      ],
    );
    for (const mesh of [tetrahedron, box()]) {
      expect((await decimate(mesh, { deviation: 100 })).mesh.triangles).toEqual(mesh.triangles);
    }
  });

  it("stays within its bound on rough surfaces", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 200, maxLength: 200 }),
        fc.double({ min: 1e-3, max: 0.3, noNaN: true }),
        fc.double({ min: 1e-3, max: 0.2, noNaN: true }),
        async (noise, roughness, deviation) => {
          const smooth = sphere(4, 16, 24);
          const positions = smooth.positions.map((value, i) => {
            return value * (1 + (roughness / 4) * noise[Math.floor(i / 3) % noise.length]);
          });
          await expectWithin({ positions, triangles: smooth.triangles }, deviation);
        },
      ),
      { seed: 20261127, numRuns: 25 },
    );
  });

  it("stops at a signal", async () => {
    const controller = new AbortController();
    const stopped = decimate(torus(9, 1, 240, 60), { deviation: 0.01, signal: controller.signal });
    controller.abort(new Error("enough"));
    await expect(stopped).rejects.toThrow("enough");
  });

  it("refuses open meshes and deviations that are no lengths", async () => {
    const open = { ...box(), triangles: box().triangles.slice(3) };
    await expect(decimate(open, { deviation: 0.01 })).rejects.toMatchObject({ code: "mesh-open" });
    for (const deviation of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      await expect(decimate(box(), { deviation })).rejects.toMatchObject({ code: "option-invalid" });
    }
  });
});
