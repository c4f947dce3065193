// Across: stopping a build between pieces of work
/** A signal that is raised by a timer while a stage holds the event loop is seen before the next piece of work. */
import { build, type Kernel, manifoldKernel } from "annulet";
import { describe, expect, it } from "vitest";
import type { Mesh } from "../src/mesh/mesh.js";

/** Pierced, sunk and beaded, so that the union takes several operations. */
const document = {
  annulet: 1,
  size: { diameter: 16 },
  tolerance: 0.1,
  profile: { width: 5, thickness: 2, outside: { form: "flat", edge: 0 } },
  pattern: {
    symmetry: "p11g",
    fit: { hold: "band", repeats: 5 },
    regions: [
      { path: "M 0.1 0.16 L 0.4 0.2 L 0.14 0.4 Z", mode: "pierced" },
      { path: "M 0.5 0.1 H 0.6 V 0.2 H 0.5 Z", mode: "sunk", depth: 0.4 },
    ],
  },
  beads: [{ along: { v: -1 }, diameter: 0.6 }],
  proud: true,
};

/** Holds the event loop until a timer of no length is surely due. */
function hold(): void {
  const until = performance.now() + 5;
  while (performance.now() < until);
}

/** A kernel that counts its operations and does something in the first. */
function watched(first: () => void): { kernel: Kernel; operations: () => number } {
  let count = 0;
  const operation = <Given extends readonly unknown[]>(run: (...given: Given) => Promise<Mesh>) => {
    return async (...given: Given) => {
      if (count++ === 0) first();
      return run(...given);
    };
  };
  const { union, subtract, cut } = manifoldKernel;
  return {
    kernel: { name: "watched", union: operation(union), subtract: operation(subtract), cut: operation(cut) },
    operations: () => count,
  };
}

describe("a signal raised by a timer", () => {
  it("stops the union after the operation at hand, and no other kernel takes over", async () => {
    const whole = watched(() => undefined);
    await build(document, { kernel: whole.kernel });
    expect(whole.operations()).toBeGreaterThan(2);

    const controller = new AbortController();
    const { kernel, operations } = watched(() => {
      setTimeout(() => controller.abort(new Error("enough")), 0);
      hold();
    });
    const stages: string[] = [];
    const stopped = build(document, {
      kernel,
      signal: controller.signal,
      onProgress: ({ stage }) => stages.push(stage),
    });
    await expect(stopped).rejects.toThrow("enough");
    // The turn in which the timer runs may come after that in which the second operation begins.
    expect(operations()).toBeLessThanOrEqual(2);
    expect(stages.at(-1)).toBe("union");
  });

  it("stops the stages after the one at hand", async () => {
    const controller = new AbortController();
    const stages: string[] = [];
    const stopped = build(document, {
      signal: controller.signal,
      onProgress: ({ stage }) => {
        stages.push(stage);
        if (stage !== "fit") return;
        setTimeout(() => controller.abort(new Error("enough")), 0);
        hold();
      },
    });
    await expect(stopped).rejects.toThrow("enough");
    expect(stages.length).toBeLessThanOrEqual(["document", "size", "fit", "profile", "pattern"].length);
  });
});
