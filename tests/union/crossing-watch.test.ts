import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { findCrossings } from "../../src/mesh/crossings.js";
import { concatMeshes, type Mesh } from "../../src/mesh/mesh.js";
import { tidyMesh } from "../../src/union/tidy-mesh.js";
import { SEED } from "../band/profile/specs.js";
import { meshOf } from "../support/meshes.js";

/** Points along each side of a plate. */
const SIDE = 6;

/** A closed plate whose upper and lower faces have so many points, at given heights. */
function plate(along: readonly number[], low: readonly number[], high: readonly number[]): Mesh {
  const count = SIDE * SIDE;
  const layer = (heights: readonly number[]) =>
    Array.from({ length: count }, (_, i) => [along[i % SIDE], along[Math.floor(i / SIDE)], heights[i]]);
  const triangles: number[][] = [];
  const quad = (a: number, b: number, c: number, d: number) => triangles.push([a, b, c], [a, c, d]);
  for (let x = 0; x + 1 < SIDE; x++) {
    for (let y = 0; y + 1 < SIDE; y++) {
      const at = (i: number, j: number) => x + i + (y + j) * SIDE;
      quad(count + at(0, 0), count + at(1, 0), count + at(1, 1), count + at(0, 1));
      quad(at(0, 0), at(0, 1), at(1, 1), at(1, 0));
    }
    const [last, wall] = [SIDE - 1, (a: number, b: number) => quad(a, b, count + b, count + a)];
    wall(x, x + 1);
    wall(last * SIDE + x + 1, last * SIDE + x);
    wall((x + 1) * SIDE, x * SIDE);
    wall(x * SIDE + last, (x + 1) * SIDE + last);
  }
  return meshOf([...layer(low), ...layer(high)], triangles);
}

describe("two rough plates that fit in each other, with short edges", () => {
  it("do not come to cross each other where short edges are collapsed", async () => {
    const step = fc.integer({ min: 100, max: 2500 }).map((n) => n * 1e-6);
    const rough = fc.array(fc.integer({ min: 0, max: 150 }), { minLength: SIDE * SIDE, maxLength: SIDE * SIDE });
    let collapsed = 0;
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { minLength: SIDE, maxLength: SIDE }),
        rough,
        rough,
        async (steps, under, over) => {
          const along = steps.map((_, i) => steps.slice(0, i).reduce((sum, x) => sum + x, 0));
          const at = (height: number, rises: readonly number[]) => rises.map((rise) => height + rise * 1e-6);
          const lower = plate(along, at(-0.1, rises0), at(0, under));
          const upper = plate(
            along,
            over.map((gap, i) => (under[i] + gap + 20) * 1e-6),
            at(0.1, rises0),
          );
          const both = concatMeshes([lower, upper]);
          expect((await findCrossings(both)).count).toBe(0);
          const tidy = tidyMesh(both);
          collapsed += both.triangles.length - tidy.triangles.length;
          expect((await findCrossings(tidy)).deepest).toBeLessThan(2e-5);
        },
      ),
      { seed: SEED, numRuns: 12 },
    );
    expect(collapsed).toBeGreaterThan(0);
  });
});

const rises0 = Array.from({ length: SIDE * SIDE }, () => 0);
