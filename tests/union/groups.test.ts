import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { groupDisjoint } from "../../src/union/groups.js";
import { SEED } from "../band/profile/specs.js";
import { box } from "../support/meshes.js";

const cube = (size: number, x: number, y: number, z: number) => box([size, size, size], [x, y, z]);
const total = (meshes: readonly Mesh[]) => meshes.reduce((sum, mesh) => sum + signedVolume(mesh), 0);

/** Boxes of eight vertices each, in order. */
function boxesOf({ positions }: Mesh): { low: number[]; high: number[] }[] {
  return Array.from({ length: positions.length / 24 }, (_, i) => {
    const own = positions.subarray(24 * i, 24 * i + 24);
    const along = (k: number) => [...own].filter((_, j) => j % 3 === k);
    return {
      low: [0, 1, 2].map((k) => Math.min(...along(k))),
      high: [0, 1, 2].map((k) => Math.max(...along(k))),
    };
  });
}

describe("grouping bodies that do not touch", () => {
  it("keeps every body, and none in a group touches another", () => {
    const at = fc.integer({ min: 0, max: 12 }).map((n) => n / 2);
    const bodies = fc.array(
      fc.tuple(fc.constantFrom(0.3, 0.5, 0.9), at, at, at).map(([size, x, y, z]) => cube(size, x, y, z)),
      { minLength: 1, maxLength: 60 },
    );
    fc.assert(
      fc.property(bodies, (all) => {
        const groups = groupDisjoint(all);
        expect(total(groups)).toBeCloseTo(total(all), 9);
        for (const group of groups) {
          const boxes = boxesOf(group);
          boxes.forEach((a, i) => {
            for (const b of boxes.slice(i + 1)) {
              expect([0, 1, 2].some((k) => a.high[k] < b.low[k] || b.high[k] < a.low[k])).toBe(true);
            }
          });
        }
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it("needs two groups for a row of neighbours, one for bodies far apart", () => {
    const row = Array.from({ length: 50 }, (_, i) => cube(1, i * 1.05, 0, 0));
    expect(groupDisjoint(row)).toHaveLength(2);
    expect(groupDisjoint(row.filter((_, i) => i % 2 === 0))).toHaveLength(1);
    expect(groupDisjoint([])).toEqual([]);
  });

  it("ends a group that is full, so that no union with one takes long", () => {
    const far = Array.from({ length: 3000 }, (_, i) => cube(0.5, 2 * (i % 50), 2 * Math.floor(i / 50), 0));
    const groups = groupDisjoint(far);
    expect(groups.map(({ triangles }) => triangles.length / 3)).toEqual([16_008, 16_008, 3000 * 12 - 2 * 16_008]);
    expect(total(groups)).toBeCloseTo(total(far), 9);
  });
});
