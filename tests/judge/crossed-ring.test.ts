// Across: a ring that crosses itself and is closed all the same
/** Built, it passes; looked at closely, by a check, it does not. */
import { describe, expect, it } from "vitest";
import { build, checkDesign } from "../../src/index.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { triangleAreas } from "../../src/mesh/triangle-areas.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";

/** Nothing of it comes again, so it is one union of everything. */
const lone = {
  annulet: 1,
  size: { diameter: 17 },
  tolerance: 0.05,
  profile: { width: 6, thickness: 2, bore: { form: "comfort", rise: 0.2 }, outside: { form: "domed", rise: 0.4 } },
  pattern: {
    fit: { repeats: 3, hold: "band" },
    symmetry: "p1",
    cover: 100,
    regions: [{ path: "M 0.2 -0.1 L 0.5 0.3 L 0.8 0 Z", height: 0.4, round: 0.1 }],
  },
};

/** The corner with the least area round it pushed through the wall into the bore: the edges stay what they were. */
function pricked(mesh: Mesh): Mesh {
  const areas = triangleAreas(mesh);
  const around = new Float64Array(mesh.positions.length / 3);
  mesh.triangles.forEach((vertex, i) => {
    around[vertex] += areas[Math.floor(i / 3)];
  });
  const place = around.reduce((least, area, vertex) => (area > 1e-5 && area < around[least] ? vertex : least), 0);
  const positions = mesh.positions.slice();
  const [x, y] = positions.subarray(3 * place, 3 * place + 2);
  const share = 1 - 3 / Math.hypot(x, y);
  positions.set([x * share, y * share], 3 * place);
  return { positions, triangles: mesh.triangles };
}

describe("a ring whose surface crosses itself", () => {
  it("is closed, and refused by a check with the place", async () => {
    const kernel = {
      ...manifoldKernel,
      name: "pricking",
      union: async (parts: readonly Mesh[]) => pricked(await manifoldKernel.union(parts)),
    };
    const { report } = await build(lone, { kernel });
    expect(report).toMatchObject({ closed: true, kernel: "pricking", road: "whole" });
    await expect(checkDesign(lone, { kernel })).rejects.toMatchObject({
      code: "not-closed",
      message: expect.stringMatching(/crossing: \d+ pairs of triangles cross, by up to [\d.]+ mm/),
    });
    expect((await checkDesign(lone)).results.length).toBeGreaterThan(0);
  });
});
