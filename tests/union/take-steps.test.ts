import { describe, expect, it } from "vitest";
import { checkSolid } from "../../src/judge/gate.js";
import type { Mesh } from "../../src/mesh/mesh.js";
import { placeStep } from "../../src/mesh/step.js";
import { signedVolume } from "../../src/mesh/volume.js";
import { manifoldKernel } from "../../src/union/kernels/manifold.js";
import { takeSteps } from "../../src/union/take-steps.js";
import { uniteRing } from "../../src/union/union.js";
import { box } from "../support/meshes.js";
import { unitStep } from "../support/steps.js";

const block = unitStep("add", [box([4, 4, 4])]);
// Through the block from below and 1 mm above it; the pin fills the hole and stands 1 mm out.
const hole = unitStep("cut", [box([2, 2, 6], [1, 1, -1])]);
const pin = unitStep("add", [box([2, 2, 5], [1, 1, 0])]);

describe("steps", () => {
  it("are worked in order: what is cut first can be filled, what is cut last cannot", async () => {
    expect(signedVolume(await takeSteps(manifoldKernel, [block, hole, pin]))).toBeCloseTo(64 + 4, 4);
    expect(signedVolume(await takeSteps(manifoldKernel, [block, pin, hole]))).toBeCloseTo(64 - 16, 4);
  });

  it("keep clear of what they are to", async () => {
    const keepClear = box([10, 10, 10], [2, -1, -1]);
    expect(signedVolume(await takeSteps(manifoldKernel, [block, { ...hole, keepClear }]))).toBeCloseTo(64 - 8, 4);
  });

  it("that are gathered are united with each other before they meet the rest, and make the same solid", async () => {
    const calls: number[] = [];
    const counting = {
      ...manifoldKernel,
      union: (parts: readonly Mesh[]) => {
        calls.push(parts.length);
        return manifoldKernel.union(parts);
      },
    };
    // By the spheres round them each touches both others, so there are three groups.
    const row = [0, 0.8, 1.6].map((x) => box([1, 1, 1], [x, 0.5, 3.5]));
    const beads = unitStep("add", row, true);
    const apart = await takeSteps(counting, [block, beads]);
    expect(calls).toEqual([4]);
    const together = await takeSteps(counting, [block, { ...beads, gathered: true }]);
    expect(calls).toEqual([4, 3, 2]);
    for (const mesh of [apart, together]) {
      expect(checkSolid(mesh).closed).toBe(true);
      expect(signedVolume(mesh)).toBeCloseTo(64 + 2.6 * 0.5, 4);
    }
  });

  it("go on from a solid that is there", async () => {
    expect(signedVolume(await takeSteps(manifoldKernel, [hole], { onto: box([4, 4, 4]) }))).toBeCloseTo(48, 4);
  });

  it("that come again after one that stands at one place go by the whole ring, and it says so", async () => {
    const symmetry = { units: 2, mirrored: false, sectors: [{ from: 0, to: Math.PI }] };
    const steps = [block, placeStep("pit", "cut", [box([2, 2, 6], [1, 1, -1])]), pin];
    const options = { kernel: manifoldKernel, fallback: manifoldKernel, check: checkSolid };
    const { mesh, road, roadReason } = await uniteRing({ steps, symmetry }, options);
    expect([road, roadReason]).toEqual(["whole", "something comes again after what stands at one place"]);
    expect(signedVolume(mesh)).toBeCloseTo(68, 4);
  });
});
