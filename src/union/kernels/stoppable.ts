/**
 * A kernel that can be stopped between its operations: each gives way to other work first, so that a signal can be raised.
 */
import { pause } from "../../base/pause.js";
import type { Kernel } from "./kernel.js";

/** The same kernel, whose operations throw the signal's reason instead of beginning once it is raised. */
export function stoppable(kernel: Kernel, signal: AbortSignal | undefined): Kernel {
  const giveWay = async () => {
    await pause();
    signal?.throwIfAborted();
  };
  return {
    name: kernel.name,
    union: (parts) => giveWay().then(() => kernel.union(parts, signal)),
    subtract: (body, tool) => giveWay().then(() => kernel.subtract(body, tool)),
    cut: (body, keep) => giveWay().then(() => kernel.cut(body, keep)),
  };
}
