import { describe, expect, it } from "vitest";
import type { Warning } from "../../src/base/errors.js";
import { geodesicSphere } from "../../src/beads/bead.js";
import { checkSolid } from "../../src/judge/gate.js";
import { gateRing } from "../../src/judge/ring.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { failureOf } from "../band/profile/specs.js";
import { revolve, sphere, torus } from "../support/meshes.js";

function gate(mesh: Mesh, balls: Parameters<typeof gateRing>[2]["balls"] = []) {
  const warnings: Warning[] = [];
  const check = gateRing(mesh, checkSolid(mesh), {
    genus: 1,
    balls,
    tolerance: 0.01,
    warn: (warning) => {
      warnings.push(warning);
    },
  });
  return { check, warnings };
}

describe("the ring's gate", () => {
  it("passes a ring without a word", () => {
    const { check, warnings } = gate(torus(9, 1, 48, 12));
    expect(check).toMatchObject({ closed: true, genus: 1 });
    expect(warnings).toEqual([]);
  });

  it("warns of too few handles", () => {
    const { check, warnings } = gate(sphere(9, 12, 20));
    expect(check.genus).toBe(0);
    expect(warnings).toMatchObject([{ code: "genus-differs", value: { genus: 0, angles: [] } }]);
  });

  it("throws on what is not closed", () => {
    const ring = torus(9, 1, 48, 12);
    expect(failureOf(() => gate({ ...ring, triangles: ring.triangles.slice(3) })).code).toBe("not-closed");
  });

  it("names the place of a bead that bridges a groove round the band", async () => {
    // A band 6 wide, 8 to 10 from the axis, with a groove 0.6 wide in its middle.
    const band = revolve(
      [
        [-3, 8],
        [3, 8],
        [3, 10],
        [0.3, 10],
        [0.3, 9],
        [-0.3, 9],
        [-0.3, 10],
        [-3, 10],
      ]
        .map(([w, r]) => [w, r] as const)
        .reverse(),
      96,
    );
    const balls = [
      { centre: [0, 10, 1.5] as const, radius: 0.4 },
      { centre: [0, 10, 0] as const, radius: 0.5 },
      { centre: [-10, 0, 0] as const, radius: 0.5 },
    ];
    const spheres = balls.map(({ centre: [x, y, z], radius: r }) =>
      transformMesh(geodesicSphere(0.01 / r), [r, 0, 0, 0, 0, r, 0, 0, 0, 0, r, 0, x, y, z, 1]),
    );
    const mesh = await manifoldKernel.union([band, ...spheres]);
    const { check, warnings } = gate(mesh, balls);
    expect(check.genus).toBe(3);
    expect(warnings).toMatchObject([{ code: "genus-differs", value: { genus: 3, angles: [90, 180] } }]);
    expect(warnings[0].message).toContain("3 handles where the design implies 1: parts bridge a gap at 90.0°, 180.0°");
  });
});
