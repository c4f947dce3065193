import { describe, expect, it, onTestFinished, vi } from "vitest";
import { AnnuletError } from "../../src/base/errors.js";
import { checkSolid } from "../../src/judge/gate.js";
import { placeStep } from "../../src/mesh/step.js";
import { bvhKernel } from "../../src/union/kernels/bvh.js";
import type { Kernel } from "../../src/union/kernels/kernel.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { uniteRing } from "../../src/union/union.js";
import { withoutFallback } from "../../src/union/without-fallback.js";
import { box } from "../support/meshes.js";

const unavailable = new AnnuletError(
  { code: "kernel-unavailable", message: "not loaded", hint: "take the bvh kernel" },
  { cause: new Error("no file") },
);

describe("a kernel that would take over and cannot be loaded", () => {
  it("does not advise the kernel that failed before it", () => {
    const error = withoutFallback(unavailable, bvhKernel, manifoldKernel) as AnnuletError;
    expect(error.code).toBe("kernel-unavailable");
    expect(error.message).toMatch(/the bvh kernel made no solid.*the manifold kernel.*could not be loaded/s);
    expect(error.hint).not.toMatch(/take the bvh/);
    expect(error.cause).toBe(unavailable.cause);
  });

  it("leaves every other failure as it is", () => {
    for (const error of [new Error("else"), new AnnuletError({ code: "kernel-failed", message: "refused" }), 7]) {
      expect(withoutFallback(error, bvhKernel, manifoldKernel)).toBe(error);
    }
  });

  it("is told so by the union, and by the kernel's own words where it was the one asked for", async () => {
    const spy = vi.spyOn(manifoldKernel, "union").mockRejectedValue(unavailable);
    onTestFinished(() => spy.mockRestore());
    const open: Kernel = {
      ...bvhKernel,
      name: "open",
      union: async ([first]) => ({ ...first, triangles: first.triangles.slice(3) }),
    };
    const steps = ["one", "other"].map((name) => placeStep(name, "add", [box()]));
    const parts = { steps, symmetry: undefined };
    const how = { fallback: manifoldKernel, check: checkSolid };
    await expect(uniteRing(parts, { kernel: open, ...how })).rejects.toThrow(/the open kernel made no solid/);
    await expect(uniteRing(parts, { kernel: manifoldKernel, ...how })).rejects.toBe(unavailable);
  });
});
