/**
 * What a ring in a worker is opened with.
 */
import { AnnuletError } from "../base/errors.js";
import type { FileSource } from "../base/files.js";
import type { RingSetup } from "../ring/open-ring.js";
import type { KernelName } from "../union/kernels/catalogue.js";
import type { PostedSetup } from "./messages.js";

/** As `RingSetup`; a kernel goes by its name, since functions cannot be posted. */
export interface WorkerSetup extends Omit<RingSetup, "kernel"> {
  readonly kernel?: KernelName | undefined;
}

/** @throws AnnuletError `option-invalid` for a kernel of the caller's own */
export function postedSetup({ files, kernel, onStage, ...rest }: WorkerSetup): PostedSetup {
  if (kernel !== undefined && typeof kernel !== "string") throw ownKernel(kernel);
  const stages = onStage === undefined ? undefined : true;
  return { ...rest, stages, kernel, files: typeof files === "function" ? "page" : files && { ...files } };
}

/** What the page itself is asked for while rings are worked. */
export interface Hearing {
  readonly files: FileSource;
  readonly onStage: RingSetup["onStage"];
}

function ownKernel(value: unknown): AnnuletError {
  return new AnnuletError({
    code: "option-invalid",
    message: "a kernel of your own cannot be passed to a worker",
    path: "kernel",
    value,
    allowed: "manifold, bvh",
    hint: "open the ring inside the worker with openRing, or name a built-in kernel",
  });
}
