import { describe, expect, it } from "vitest";
import { type Bead, beadMesh, geodesicSphere } from "../../../../src/beads/bead.js";
import { cornerNormals, facesOf } from "../../../../src/output/picture/corner-normals.js";
import { knownBeads } from "../../../../src/output/picture/known/known-beads.js";
import { knownNormals } from "../../../../src/output/picture/known/known-normals.js";

const DEVIATION = 0.04;

describe("known beads", () => {
  it("give every corner of a bead's mesh the normal of its sphere, where faces alone do not", () => {
    const bead: Bead = { centre: [9, 3, 1], radius: 0.3, outward: [3 / Math.sqrt(10), 1 / Math.sqrt(10), 0] };
    const whole = beadMesh(bead, geodesicSphere(DEVIATION));
    // Half of it, as where a bead stands on something: at the rim faces are missing.
    const triangles = whole.triangles.slice(0, 3 * Math.floor(whole.triangles.length / 6));
    const mesh = { positions: whole.positions, triangles };
    const seen = new Uint8Array(triangles.length / 3).fill(1);
    const other: Bead = { ...bead, centre: [9, 3, 1.7] };
    const known = knownNormals(mesh.positions, [knownBeads([other, bead], DEVIATION, 0.02)]);
    const worst = (normals: Float32Array) => {
      let least = 1;
      triangles.forEach((vertex, corner) => {
        const ray = [0, 1, 2].map((k) => mesh.positions[3 * vertex + k] - bead.centre[k]);
        const dot = ray.reduce((sum, value, k) => sum + value * normals[3 * corner + k], 0);
        least = Math.min(least, dot / Math.hypot(...ray));
      });
      return least;
    };
    const crease = Math.PI / 4;
    expect(worst(cornerNormals(mesh, facesOf(mesh), { seen, crease, known }))).toBeGreaterThan(1 - 1e-6);
    expect(worst(cornerNormals(mesh, facesOf(mesh), { seen, crease }))).toBeLessThan(0.99);
  });

  it("know nothing where there are none, nor off their spheres", () => {
    const found: number[][] = [];
    knownBeads([], DEVIATION, 0.02)(1, 2, 3, (...normal) => found.push(normal));
    const bead: Bead = { centre: [0, 0, 0], radius: 0.3, outward: [1, 0, 0] };
    for (const x of [0, 0.25, 0.35, 5]) knownBeads([bead], DEVIATION, 0.02)(x, 0, 0, (...normal) => found.push(normal));
    expect(found).toEqual([]);
  });
});
