// Covers: src/design/sprue.ts, src/ring/steps/casting.ts
import { describe, expect, it } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { radians } from "../../src/base/units.js";
import { placeSprue } from "../../src/casting/add-sprue.js";
import { sprueSchema } from "../../src/design/sprue.js";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { build } from "../../src/ring/build.js";
import { openInside } from "../../src/ring/open-ring.js";
import { bvhKernel } from "../../src/union/kernels/bvh.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";

const DIAMETER = 17.2;
const profile = {
  width: 5,
  thickness: 1.8,
  bore: { form: "comfort", rise: 0.2 },
  outside: { form: "domed", rise: 0.5 },
};
const plain = { annulet: 1, size: { diameter: DIAMETER }, profile };
const sprue = { diameter: 2.4, length: 9, end: 3, at: 250, fillet: 0.5 };

/** The farthest that a mesh reaches out in a direction square to the finger's axis. */
function reach({ positions }: Mesh, at: number): number {
  let most = 0;
  for (let i = 0; i < positions.length; i += 3) {
    most = Math.max(most, positions[i] * Math.cos(radians(at)) + positions[i + 1] * Math.sin(radians(at)));
  }
  return most;
}

describe("a ring with its sprue", () => {
  it("holds the ring and the sprue without what they share, by the kernel's own difference", async () => {
    const ring = (await openInside(plain).ask(["profile", "solid"])).answers;
    const { mesh, report } = await build({ ...plain, sprue });
    const body = placeSprue(sprueSchema.parse(sprue), { profile: ring.profile, tolerance: 0.01 }).mesh;
    const outside = await manifoldKernel.subtract(body, ring.solid);
    const shared = signedVolume(body) - signedVolume(outside);
    expect(shared).toBeGreaterThan(1);
    const expected = signedVolume(ring.solid) + signedVolume(body) - shared;
    expect(signedVolume(mesh) / expected).toBeCloseTo(1, 6);
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect(report.sprue?.volume).toBeCloseTo(signedVolume(outside), 3);
  });

  it("stands where it is told, and as far out", async () => {
    const { mesh, report } = await build({ ...plain, sprue });
    const outside = DIAMETER / 2 + profile.thickness;
    expect(report.sprue).toMatchObject({ root: outside, reach: outside + 9, material: "ag925", kernel: "manifold" });
    expect(reach(mesh, 250)).toBeCloseTo(outside + 9, 4);
    expect(reach(mesh, 70)).toBeLessThan(outside + 1e-6);
  });

  it("is in no figure of the ring but its own, and not on the finished piece", async () => {
    const casting = { shrinkage: 1.5, finishing: 0.05 };
    const [with_, without] = await Promise.all([build({ ...plain, casting, sprue }), build({ ...plain, casting })]);
    const { volume, bounds, mass, allowances, weights, triangles } = with_.report;
    const { report: bare } = without;
    expect({ volume, bounds, mass, triangles }).toEqual({
      volume: bare.volume,
      bounds: bare.bounds,
      mass: bare.mass,
      triangles: bare.triangles,
    });
    expect({ allowances, weights }).toEqual({ allowances: bare.allowances, weights: bare.weights });
    // On the master it is scaled as all else is.
    const told = with_.report.sprue;
    expect(told?.weight).toBeCloseTo(((told?.volume ?? 0) / 1000) * 10.36, 1);
    const more = signedVolume(with_.mesh) - signedVolume(without.mesh);
    expect(more / (told?.volume ?? 0)).toBeCloseTo(1 / 0.985 ** 3, 5);
    expect(with_.report.print.box[1]).toBeGreaterThan(bare.print.box[1] + 7);
    const finished = await build({ ...plain, casting, sprue }, { piece: "finished" });
    expect(finished.report.sprue).toBeNull();
    expect(reach(finished.mesh, 250)).toBeLessThan(DIAMETER / 2 + profile.thickness + 1e-6);
  });

  it.each([
    ["a plain cylinder", { diameter: 2, length: 6 }],
    ["no fillet", { diameter: 2, length: 6, fillet: 0, at: 90 }],
    ["a steep funnel", { diameter: 1.5, length: 6, end: 6, fillet: 1, at: -33.3 }],
    ["beside the middle", { diameter: 1.2, length: 6, across: 1, at: 0 }],
  ])("closes with %s, by both kernels", async (_, spec) => {
    for (const kernel of [manifoldKernel, bvhKernel]) {
      const { mesh } = await build({ ...plain, sprue: spec }, { kernel });
      expect(checkSolid(mesh)).toMatchObject({ closed: true, genus: 1 });
    }
  });

  it("stands on beads too, since it is cut off again", async () => {
    const beads = [{ along: { v: 0 }, diameter: 0.6 }];
    const { mesh } = await build({ ...plain, beads, sprue });
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1 });
  });

  it.each([
    [{ ...sprue, diameter: 0.2 }, "sprue.diameter"],
    [{ ...sprue, length: 0 }, "sprue.length"],
    [{ diameter: 2 }, "sprue.length"],
    [{ ...sprue, taper: 3 }, "sprue.taper"],
    [{ ...sprue, length: 1, fillet: 4 }, "sprue.fillet"],
  ])("%j is refused with its place and what is allowed", async (spec, path) => {
    const reason: unknown = await build({ ...plain, sprue: spec }).catch((error) => error);
    expect(reason).toBeInstanceOf(AnnuletError);
    const { problems } = reason as AnnuletError;
    expect(problems).toMatchObject([{ path }]);
    expect(String(problems[0].allowed ?? problems[0].hint)).not.toBe("undefined");
  });

  it("is refused where the band does not carry it", async () => {
    const reason: unknown = await build({ ...plain, sprue: { ...sprue, diameter: 5 } }).catch((error) => error);
    expect(reason).toBeInstanceOf(AnnuletError);
    expect((reason as AnnuletError).problems).toMatchObject([{ code: "sprue-too-wide", path: "sprue.diameter" }]);
  });
});
