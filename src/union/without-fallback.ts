/**
 * What is told where a kernel's rings were not accepted and the one that takes over cannot be loaded: advice to take the
 * first one would lead round in a circle.
 */
import { AnnuletError } from "../base/errors.js";
import { mendWasm } from "../base/wasm-places.js";
import type { Kernel } from "./kernels/kernel.js";

/** The error of the kernel that was to take over, said anew where it could not be loaded. */
export function withoutFallback(error: unknown, kernel: Kernel, fallback: Kernel): unknown {
  if (!(error instanceof AnnuletError) || error.code !== "kernel-unavailable") return error;
  return new AnnuletError(
    {
      code: "kernel-unavailable",
      message: `the ${kernel.name} kernel made no solid that is closed and as drawn, and the ${fallback.name} kernel, which takes over then, could not be loaded`,
      hint: `${mendWasm("manifold")}; the ${kernel.name} kernel alone may do for a design with fewer beads and regions that touch`,
    },
    { cause: error.cause },
  );
}
