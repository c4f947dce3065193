/**
 * A kernel whose failures are told as its own: what it throws, and what it gives that is no mesh.
 */
import { AnnuletError } from "../../base/errors.js";
import type { Mesh } from "../../mesh/mesh.js";
import { requireSound } from "../../mesh/sound.js";
import { kernelNamed } from "./catalogue.js";
import type { Kernel } from "./kernel.js";

/** Longest span of another program's message that is passed on, characters. */
const LONGEST_MESSAGE = 300;

/** The same kernel; its operations reject with AnnuletError `kernel-failed`, whose cause is what it threw. */
export function tellFailures(kernel: Kernel): Kernel {
  const { name } = kernel;
  const trusted = kernelNamed(name) === kernel;
  const told = async (operation: string, run: () => Promise<Mesh>): Promise<Mesh> => {
    try {
      const mesh = await run();
      // Those built in make meshes of what their libraries give.
      if (!trusted) requireMesh(mesh);
      return mesh;
    } catch (cause) {
      if (trusted && cause instanceof AnnuletError) throw cause;
      throw failureOf(name, operation, cause);
    }
  };
  return {
    name,
    union: (parts, signal, onPart) => told("union", () => kernel.union(parts, signal, onPart)),
    subtract: (body, tool, signal) => told("subtract", () => kernel.subtract(body, tool, signal)),
    cut: (body, keep, signal) => told("cut", () => kernel.cut(body, keep, signal)),
  };
}

function requireMesh(mesh: Mesh): void {
  const given = Object(mesh) as Partial<Mesh>;
  if (!(given.positions instanceof Float64Array && given.triangles instanceof Uint32Array)) {
    throw new TypeError("what it gave is no mesh: positions are a Float64Array, triangles a Uint32Array");
  }
  requireSound(mesh);
}

function failureOf(name: string, operation: string, cause: unknown): AnnuletError {
  const why = cause instanceof Error ? `${cause.name}: ${cause.message}` : String(cause);
  return new AnnuletError(
    {
      code: "kernel-failed",
      message: `the ${name} kernel failed in ${operation}: ${why.slice(0, LONGEST_MESSAGE)}`,
      hint: "this is a fault of that kernel, not of the design; the error's cause is what it threw",
    },
    { cause },
  );
}

/** Whether an error is a kernel's own. */
export function isKernelFailure(error: unknown): error is AnnuletError {
  return error instanceof AnnuletError && error.code === "kernel-failed";
}
