import { expect, it, vi } from "vitest";
import type { Kernel } from "../../../src/union/kernels/kernel.js";
import { stoppable } from "../../../src/union/kernels/stoppable.js";
import { box } from "../../support/meshes.js";

const cube = box();

function counting(): { kernel: Kernel; ran: () => number } {
  const operation = vi.fn(async () => cube);
  return {
    kernel: { name: "counting", union: operation, subtract: operation, cut: operation },
    ran: () => operation.mock.calls.length,
  };
}

const operations: readonly [string, (kernel: Kernel) => Promise<unknown>][] = [
  ["union", (kernel) => kernel.union([cube, cube])],
  ["subtract", (kernel) => kernel.subtract(cube, cube)],
  ["cut", (kernel) => kernel.cut(cube, { normal: [0, 0, 1], offset: 0 })],
];

it.each(operations)("%s is handed on, under the same name", async (_, run) => {
  const { kernel, ran } = counting();
  const wrapped = stoppable(kernel, undefined);
  expect([await run(wrapped), wrapped.name, ran()]).toEqual([cube, "counting", 1]);
});

it.each(operations)("%s does not begin once a timer that was due has raised the signal", async (_, run) => {
  const { kernel, ran } = counting();
  const { signal } = ((controller) => {
    setTimeout(() => controller.abort(new Error("enough")), 0);
    return controller;
  })(new AbortController());
  const wrapped = stoppable(kernel, signal);
  const work = async () => {
    // Work that never gives way itself, one operation after the other.
    for (let i = 0; i < 1000; i++) {
      const until = performance.now() + 1;
      while (performance.now() < until);
      await run(wrapped);
    }
  };
  await expect(work()).rejects.toThrow("enough");
  expect(ran()).toBeLessThan(1000);
});
