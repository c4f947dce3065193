import { build } from "annulet";
import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import { concatMeshes } from "../../src/mesh/mesh.js";
import { reverseMesh } from "../../src/mesh/transform.js";
import { dropSpecks } from "../../src/union/specks.js";
import { box, torus } from "../support/meshes.js";

const ring = torus(9, 1, 48, 12);

describe("dropping specks", () => {
  it("drops chips and sealed hollows thinner than 10 µm", () => {
    const chip = box([0.04, 0.02, 6e-3], [12, 0, 0]);
    const hollow = reverseMesh(box([0.04, 0.02, 6e-3], [9, 0, 0]));
    const { mesh, hollows } = dropSpecks(concatMeshes([chip, ring, hollow]));
    const check = checkSolid(mesh);
    expect(hollows).toEqual([]);
    expect(check).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect(check.triangles).toBe(ring.triangles.length / 3);
  });

  it("keeps pieces that are thicker, for the gate to refuse", () => {
    const piece = box([0.04, 0.04, 0.04], [12, 0, 0]);
    expect(dropSpecks(concatMeshes([ring, piece])).mesh).toEqual(concatMeshes([ring, piece]));
  });

  it("fills a sealed hollow that is thicker, and tells of it", () => {
    const { mesh, hollows } = dropSpecks(concatMeshes([ring, reverseMesh(box([0.05, 0.04, 0.03], [9, 0, 0]))]));
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect(mesh.triangles).toEqual(ring.triangles);
    expect(hollows).toHaveLength(1);
    expect(hollows[0].volume).toBeCloseTo(0.05 * 0.04 * 0.03, 12);
  });

  it("leaves one shell as it is, however thin", () => {
    const thin = box([0.04, 0.02, 1e-3]);
    expect(dropSpecks(thin).mesh).toBe(thin);
  });

  it("lets the ring close that showed them: beads on a border whose ends the mirror brings together", async () => {
    const path =
      "M 0.50133528 0.05733092 L 0.3171327 0.07999198 L 0.24027313 0.02579615 L 0.26806552 -0.06404909 L 0.44105094 -0.17734504 Z";
    const { report } = await build({
      annulet: 1,
      size: { diameter: 15 },
      tolerance: 0.06,
      profile: {
        width: 4,
        thickness: 1.6,
        bore: { form: "comfort", rise: 0.05, edge: 0 },
        outside: { form: "flat", edge: 0 },
      },
      pattern: {
        fit: { repeats: 3, rows: 1, aspect: 0.6, hold: "tile" },
        symmetry: "p1m1",
        cover: 60,
        regions: [{ path, height: 0.2, beads: { diameter: 0.306, embed: 0.517, on: "border" } }],
      },
    });
    expect(report).toMatchObject({ closed: true, components: 1 });
  });
});
