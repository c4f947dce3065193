import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Point3 } from "../../src/base/math/point.js";
import { beadMesh, geodesicSphere } from "../../src/beads/bead.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { transformMesh } from "../../src/mesh/transform.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { SEED } from "../band/profile/specs.js";

const corner = ({ positions }: Mesh, vertex: number) =>
  [0, 1, 2].map((k) => positions[3 * vertex + k]) as unknown as Point3;

/** Least and largest distance of a sphere's surface from the origin: in the triangles' planes and at the vertices. */
function extent(mesh: Mesh): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, 0];
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => corner(mesh, mesh.triangles[t + k]));
    const [u, v] = [b.map((value, k) => value - a[k]), c.map((value, k) => value - a[k])];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    low = Math.min(low, (n[0] * a[0] + n[1] * a[1] + n[2] * a[2]) / Math.hypot(...n));
    high = Math.max(high, Math.hypot(...a));
  }
  return [low, high];
}

/** Vertices as sorted text, to nine decimals. */
function cloud({ positions }: Mesh): string[] {
  return Array.from({ length: positions.length / 3 }, (_, i) =>
    [0, 1, 2].map((k) => (Math.round(positions[3 * i + k] * 1e9) / 1e9 + 0).toFixed(9)).join(" "),
  ).sort();
}

const mirrored = (mesh: Mesh, axis: number) =>
  transformMesh(mesh, Array.from({ length: 16 }, (_, i) => (i % 5 !== 0 ? 0 : i === 5 * axis ? -1 : 1)) as never);

describe("geodesic spheres", () => {
  it.each([0.2, 0.05, 0.02, 0.01, 0.003])("lie within %d of the sphere on both sides", (deviation) => {
    const sphere = geodesicSphere(deviation);
    const [low, high] = extent(sphere);
    expect(low).toBeGreaterThanOrEqual(1 - deviation - 1e-12);
    expect(high).toBeLessThanOrEqual(1 + deviation + 1e-12);
    expect(high - 1).toBeCloseTo(1 - low, 12);
    const check = checkSolid(sphere);
    expect(check.closed).toBe(true);
    expect(check.genus).toBe(0);
    expect(Math.abs(check.volume / ((4 / 3) * Math.PI) - 1)).toBeLessThan(3 * deviation);
  });

  it("are their own mirror image in three planes at right angles", () => {
    for (const deviation of [0.1, 0.02]) {
      const sphere = geodesicSphere(deviation);
      for (const axis of [0, 1, 2]) expect(cloud(mirrored(sphere, axis))).toEqual(cloud(sphere));
    }
  });

  it("are no finer than they must be", () => {
    const counts = [0.2, 0.05, 0.02, 0.01].map((deviation) => geodesicSphere(deviation).triangles.length / 3);
    for (const [i, count] of counts.entries()) {
      // Class I of frequency f has 20 f² faces; one frequency less would miss the deviation.
      const frequency = Math.sqrt(count / 20);
      expect(Number.isInteger(frequency)).toBe(true);
      if (i > 0) expect(count).toBeGreaterThan(counts[i - 1]);
    }
  });
});

describe("a bead's mesh", () => {
  const unit = geodesicSphere(0.02);

  it("stands where it should, of its size, facing outward", () => {
    const at = fc.double({ min: -10, max: 10, noNaN: true });
    const angle = fc.double({ min: 0, max: 6.28, noNaN: true });
    fc.assert(
      fc.property(angle, fc.double({ min: -1, max: 1, noNaN: true }), at, (theta, tilt, z) => {
        const centre: Point3 = [9 * Math.cos(theta), 9 * Math.sin(theta), z];
        const outward: Point3 = [Math.cos(tilt) * Math.cos(theta), Math.cos(tilt) * Math.sin(theta), Math.sin(tilt)];
        const mesh = beadMesh({ centre, radius: 0.2, outward }, unit);
        expect(signedVolume(mesh)).toBeCloseTo(signedVolume(unit) * 0.008, 12);
        const moved = { ...mesh, positions: mesh.positions.map((value, i) => (value - centre[i % 3]) / 0.2) };
        const [low, high] = extent(moved);
        expect(low).toBeGreaterThan(0.98 - 1e-9);
        expect(high).toBeLessThan(1.02 + 1e-9);
      }),
      { seed: SEED, numRuns: 40 },
    );
  });

  it("is mirrored where its place is: a bead at −θ is the mirror image of the one at θ", () => {
    const beadAt = (theta: number, z: number) => {
      const outward: Point3 = [Math.cos(theta) * 0.8, Math.sin(theta) * 0.8, Math.sign(z) * 0.6];
      return beadMesh({ centre: [9 * Math.cos(theta), 9 * Math.sin(theta), z], radius: 0.2, outward }, unit);
    };
    expect(cloud(mirrored(beadAt(0.3, 1), 1))).toEqual(cloud(beadAt(-0.3, 1)));
    expect(cloud(mirrored(beadAt(0.3, 1), 2))).toEqual(cloud(beadAt(0.3, -1)));
  });
});

describe("spheres in the kernel", () => {
  const ball = (radius: number, x: number) =>
    transformMesh(geodesicSphere(2e-4), [radius, 0, 0, 0, 0, radius, 0, 0, 0, 0, radius, 0, x, 0, 0, 1]);

  it("have the volume of a cap, π h² (3R − h) / 3 (R 10, h 3: 254.4690)", async () => {
    const cap = await manifoldKernel.cut(ball(10, 0), { normal: [-1, 0, 0], offset: -7 });
    expect(signedVolume(cap) / 254.469).toBeCloseTo(1, 3);
  });

  it("have the volume of a lens (R 2, r 1, d 2: 1.701696)", async () => {
    const [a, b] = [ball(2, 0), ball(1, 2)];
    const both = await manifoldKernel.union([a, b]);
    expect(signedVolume(a) + signedVolume(b) - signedVolume(both)).toBeCloseTo(1.701696, 2);
  });
});
