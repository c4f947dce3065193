import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { usedVertices } from "../../src/mesh/used-vertices.js";
import { box, meshOf } from "../support/meshes.js";

describe("a mesh without the vertices that nothing uses", () => {
  it("is the mesh itself where all are used", () => {
    const mesh = box();
    expect(usedVertices(mesh)).toBe(mesh);
  });

  it("keeps the others in their order, and the triangles between the same points", () => {
    const points = [0, 1, 2, 3, 4, 5].map((i) => [i, 10 * i, 100 * i]);
    const { positions, triangles } = usedVertices(
      meshOf(points, [
        [5, 1, 3],
        [3, 1, 5],
      ]),
    );
    expect(Array.from(positions)).toEqual([points[1], points[3], points[5]].flat());
    expect(Array.from(triangles)).toEqual([2, 0, 1, 1, 0, 2]);
  });

  it("is all that leaves of a ring with a mark, which is put on some of its units", async () => {
    const { mesh, report } = await build({
      annulet: 1,
      size: { diameter: 17.5 },
      tolerance: 0.06,
      profile: { width: 5, thickness: 2, bore: { form: "flat" }, outside: { form: "flat" } },
      proud: true,
      pattern: {
        fit: { repeats: 10, hold: "band" },
        symmetry: "p1m1",
        regions: [{ path: "M 0.2 -0.2 H 0.8 V 0.1 H 0.2 Z", height: 0.4 }],
      },
      hallmark: { at: "bore", angle: 270, width: 2, height: 1, depth: 0.2 },
    });
    expect(report.road).toBe("mirror");
    expect(new Set(mesh.triangles).size).toBe(mesh.positions.length / 3);
  });
});
