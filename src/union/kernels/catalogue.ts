/**
 * The built-in kernels by their names. They have no privilege: any value of the `Kernel` interface stands beside them.
 */
import { bvhKernel } from "./bvh.js";
import type { Kernel } from "./kernel.js";
import { manifoldKernel } from "./manifold.js";

/** Names of the built-in kernels. */
export const KERNEL_NAMES = ["manifold", "bvh"] as const;

/** A built-in kernel, by its name. */
export type KernelName = (typeof KERNEL_NAMES)[number];

const BY_NAME: Readonly<Record<KernelName, Kernel>> = { manifold: manifoldKernel, bvh: bvhKernel };

/** The kernel that a name stands for; undefined where none does. */
export function kernelNamed(name: string): Kernel | undefined {
  return KERNEL_NAMES.filter((known) => known === name).map((known) => BY_NAME[known])[0];
}

/** What a value lacks to be a kernel: nothing where it is one. */
export function missingInKernel(value: unknown): readonly string[] {
  const kernel = (typeof value === "object" ? value : undefined) as Partial<Kernel> | null | undefined;
  const operations = ["union", "subtract", "cut"] as const;
  const missing = operations.filter((operation) => typeof kernel?.[operation] !== "function");
  return [...(typeof kernel?.name === "string" ? [] : ["name"]), ...missing];
}
