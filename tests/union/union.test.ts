import { describe, expect, it } from "vitest";
import { checkSolid, type SolidCheck } from "../../src/judge/gate.js";
import { signedVolume } from "../../src/mesh/volume.js";
import type { Kernel } from "../../src/union/kernels/kernel.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { type RingParts, type UnionOptions, uniteRing } from "../../src/union/union.js";
import { box, torus } from "../support/meshes.js";
import { unitStep } from "../support/steps.js";

const bodies = {
  band: torus(9, 1, 48, 12),
  reliefs: [box([1, 1, 1], [9.5, -0.5, -0.5])],
  beads: [box([0.5, 0.5, 0.5], [-10.2, -0.2, -0.2]), box([0.5, 0.5, 0.5], [-0.2, 9.7, -0.2])],
};

const parts: RingParts = {
  steps: [unitStep("add", [bodies.band]), unitStep("add", bodies.reliefs), unitStep("add", bodies.beads, true)],
};

const kernelOf = (name: string, union: Kernel["union"]): Kernel => ({
  ...manifoldKernel,
  name,
  union,
});

const leaky = kernelOf("leaky", async ([band]) => ({ ...band, triangles: band.triangles.slice(3) }));
const throwing = kernelOf("throwing", () => Promise.reject(new Error("out of memory")));

const unite = (options: Partial<UnionOptions<SolidCheck>> = {}) =>
  uniteRing(parts, { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid, ...options });

describe("uniting a ring's parts", () => {
  it("makes one solid of them, with the kernel's name", async () => {
    const { mesh, kernel, road, rejected } = await unite();
    expect(checkSolid(mesh)).toMatchObject({ closed: true, components: 1, genus: 1 });
    expect({ kernel, road, rejected }).toEqual({ kernel: "manifold", road: "whole", rejected: undefined });
    const all = [bodies.band, ...bodies.reliefs, ...bodies.beads].map(signedVolume);
    expect(signedVolume(mesh)).toBeLessThan(all.reduce((sum, volume) => sum + volume, 0));
    expect(signedVolume(mesh)).toBeGreaterThan(all[0]);
  });

  it("hands a band alone through untouched", async () => {
    const alone = { steps: [unitStep("add", [bodies.band])] };
    const result = await uniteRing(alone, { kernel: throwing, fallback: manifoldKernel, check: checkSolid });
    expect(result).toMatchObject({ kernel: "none", road: "plain", check: { closed: true }, hollows: [] });
    expect(result.mesh).toBe(bodies.band);
  });

  it.each([
    [leaky, "did not close"],
    [throwing, "failed"],
  ])("falls back where the $name kernel fails, and says so", async (kernel, how) => {
    expect(await unite({ kernel })).toMatchObject({
      kernel: "manifold",
      road: "whole",
      rejected: kernel.name,
      hollows: [],
      check: { closed: true },
      roadReason: `nothing comes again round the ring; whole by ${kernel.name} ${how}`,
    });
  });

  it("takes another kernel's result where it is sound", async () => {
    const other = kernelOf("other", manifoldKernel.union);
    expect(await unite({ kernel: other })).toMatchObject({ kernel: "other" });
  });

  it("passes on what the last kernel throws", async () => {
    await expect(unite({ kernel: throwing, fallback: throwing })).rejects.toThrow("out of memory");
    await expect(unite({ kernel: leaky, fallback: throwing })).rejects.toThrow("out of memory");
  });

  it("keeps what a kernel threw as the cause, beside what the last one threw", async () => {
    expect((await unite({ kernel: throwing })).failure?.cause).toEqual(new Error("out of memory"));
    const other = kernelOf("other", () => Promise.reject(new RangeError("none")));
    await expect(unite({ kernel: throwing, fallback: other })).rejects.toMatchObject({
      problems: [{ message: expect.stringContaining("RangeError: none") }, { code: "kernel-failed" }],
      cause: new Error("out of memory"),
    });
  });

  it("gives what was last tried where none is sound: the gate decides", async () => {
    const { mesh, kernel } = await unite({ kernel: leaky, fallback: leaky });
    expect(kernel).toBe("leaky");
    expect(checkSolid(mesh).closed).toBe(false);
  });
});

describe("stopping a union", () => {
  it("rejects with the signal's reason, also one that is no AbortError, and asks no kernel", async () => {
    let asked = 0;
    const counting = kernelOf("counting", (bodies) => {
      asked++;
      return manifoldKernel.union(bodies);
    });
    for (const reason of [undefined, new Error("closed the window"), "text"]) {
      const signal = AbortSignal.abort(reason);
      const failed = unite({ kernel: counting, signal });
      if (reason === undefined) await expect(failed).rejects.toMatchObject({ name: "AbortError" });
      else await expect(failed).rejects.toBe(reason);
    }
    expect(asked).toBe(0);
  });

  it("does not fall back once stopped", async () => {
    const controller = new AbortController();
    const stopping = kernelOf("stopping", async (bodies) => {
      controller.abort(new Error("enough"));
      return leaky.union(bodies);
    });
    await expect(unite({ kernel: stopping, signal: controller.signal })).rejects.toThrow("enough");
  });
});
