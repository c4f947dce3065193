import { expect, it } from "vitest";
import type { Mesh } from "../../../src/mesh/mesh.js";
import type { Kernel } from "../../../src/union/kernels/kernel.js";
import { manifoldKernel } from "../../../src/union/kernels/manifold.js";
import { isKernelFailure, tellFailures } from "../../../src/union/kernels/tell-failures.js";
import { box } from "../../support/meshes.js";

const cube = box();

const giving = (give: () => unknown): Kernel => {
  const operation = async () => give() as Mesh;
  return tellFailures({ name: "mine", union: operation, subtract: operation, cut: operation });
};

const failing = (thrown: unknown) =>
  giving(() => {
    throw thrown;
  });

it("hands on what a kernel gives, under its name", async () => {
  expect(await giving(() => cube).union([cube])).toBe(cube);
  expect(giving(() => cube).name).toBe("mine");
});

it.each([
  ["union", (kernel: Kernel) => kernel.union([cube])],
  ["subtract", (kernel: Kernel) => kernel.subtract(cube, cube)],
  ["cut", (kernel: Kernel) => kernel.cut(cube, { normal: [0, 0, 1], offset: 0 })],
] as const)("tells what is thrown in %s as the kernel's, with its cause", async (operation, run) => {
  const cause = new TypeError("no such table");
  const error: unknown = await run(failing(cause)).catch((reason: unknown) => reason);
  expect(error).toMatchObject({
    code: "kernel-failed",
    message: expect.stringContaining(`the mine kernel failed in ${operation}: TypeError: no such table`),
    cause,
  });
  expect(isKernelFailure(error)).toBe(true);
});

it("tells a throw that is no error", async () => {
  await expect(failing("broken").union([])).rejects.toThrow("failed in union: broken");
  await expect(failing(undefined).union([])).rejects.toThrow("failed in union: undefined");
});

it.each([
  ["nothing", undefined],
  ["plain lists", { positions: [0, 0, 0], triangles: [] }],
  ["an index that is not there", { positions: cube.positions, triangles: Uint32Array.of(0, 1, 900) }],
  ["coordinates that are none", { positions: Float64Array.of(0, 0, Number.NaN), triangles: new Uint32Array() }],
])("refuses %s for a mesh", async (_, mesh) => {
  await expect(giving(() => mesh).union([cube])).rejects.toMatchObject({ code: "kernel-failed" });
});

it("leaves the errors of built-in kernels as they are", async () => {
  const open = { ...cube, triangles: cube.triangles.slice(3) };
  await expect(tellFailures(manifoldKernel).union([cube, open])).rejects.toMatchObject({
    code: "kernel-failed",
    message: expect.stringContaining("the manifold kernel refused a part"),
  });
});
