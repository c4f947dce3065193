import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ON_LINE, splitAtLines } from "../../../src/band/surface/refine.js";
import { checkForm } from "../../../src/judge/check-form.js";
import type { Mesh } from "../../../src/mesh/mesh.js";
import { signedVolume } from "../../../src/mesh/volume.js";
import { box, meshOf, revolve, sphere, torus } from "../../support/meshes.js";
import { SEED } from "../profile/specs.js";

/** Lines that run strictly through a triangle, over all triangles. */
function crossings({ positions, triangles }: Mesh, axis: number, lines: readonly number[]): number {
  let count = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const values = [0, 1, 2].map((k) => positions[3 * triangles[t + k] + axis]);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    count += lines.filter((line) => line > low + ON_LINE && line < high - ON_LINE).length;
  }
  return count;
}

const linesFrom = (values: readonly number[]) => [...new Set(values)].sort((a, b) => a - b);
const line = fc.integer({ min: -40_000, max: 40_000 }).map((n) => n / 10_000);
const lines = fc.array(line, { maxLength: 14 }).map(linesFrom);

const anyMesh: fc.Arbitrary<Mesh> = fc
  .record({
    shape: fc.constantFrom(
      box([5, 3, 2], [-2, -1, -1]),
      torus(2.5, 0.9, 7, 5),
      sphere(3, 4, 6),
      // An L turned round: not convex.
      revolve(
        [
          [0.5, 2],
          [0.5, 3],
          [1, 3],
          [1, 1],
          [-1, 1],
          [-1, 2],
        ],
        9,
      ),
    ),
    jitter: fc.array(fc.double({ min: -0.1, max: 0.1, noNaN: true }), { minLength: 12, maxLength: 12 }),
  })
  .map(({ shape, jitter }) => ({
    positions: shape.positions.map((value, i) => value + jitter[i % jitter.length]),
    triangles: shape.triangles,
  }));

describe("splitting at lines", () => {
  it("leaves no triangle across a line, and closed, of the same genus and volume", () => {
    fc.assert(
      fc.property(anyMesh, lines, fc.constantFrom(0 as const, 1 as const), (mesh, at, axis) => {
        const before = checkForm(mesh, 1);
        const split = splitAtLines(mesh, axis, at);
        const after = checkForm(split, 1);
        expect(crossings(split, axis, at)).toBe(0);
        expect([before.faults, after.faults]).toEqual([[], []]);
        expect(after.genus).toBe(before.genus);
        expect(Math.abs(after.volume - before.volume)).toBeLessThan(1e-10 * Math.abs(before.volume));
      }),
      { seed: SEED, numRuns: 150 },
    );
  });

  it("keeps all of that when split along one axis and then the other", () => {
    fc.assert(
      fc.property(anyMesh, lines, lines, (mesh, us, vs) => {
        const split = splitAtLines(splitAtLines(mesh, 0, us), 1, vs);
        expect(crossings(split, 0, us)).toBe(0);
        expect(crossings(split, 1, vs)).toBe(0);
        expect(checkForm(split, 1).faults.map(({ code }) => code)).not.toContain("open-edge");
        expect(signedVolume(split)).toBeCloseTo(signedVolume(mesh), 9);
      }),
      { seed: SEED, numRuns: 80 },
    );
  });

  it("puts the new vertices on the lines, to the last bit", () => {
    const mesh = torus(2.5, 0.9, 7, 5);
    const at = [-2.1, -0.3, 0.1, 1.7];
    const { positions } = splitAtLines(mesh, 0, at);
    for (let i = mesh.positions.length; i < positions.length; i += 3) expect(at).toContain(positions[i]);
  });

  it("takes a vertex near a line as on it, and moves nothing", () => {
    const near = meshOf(
      [
        [0, 0, 0],
        [1 + ON_LINE / 2, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      [
        [0, 2, 1],
        [0, 1, 3],
        [0, 3, 2],
        [1, 2, 3],
      ],
    );
    const split = splitAtLines(near, 0, [1]);
    expect(split.positions).toEqual(near.positions);
    expect(split.triangles).toEqual(near.triangles);
  });

  it("changes nothing without lines", () => {
    const mesh = box();
    expect(splitAtLines(mesh, 1, [])).toEqual(mesh);
  });

  it("gives the same bytes again", () => {
    const mesh = sphere(3, 5, 7);
    const at = [-1, 0.2, 2];
    expect(splitAtLines(mesh, 0, at)).toEqual(splitAtLines(mesh, 0, at));
  });
});
