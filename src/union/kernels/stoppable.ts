/**
 * A kernel that can be stopped between its operations: each gives way to other work first, so that a signal can be raised.
 */
import { pause } from "../../base/pause.js";
import type { Kernel } from "./kernel.js";

/**
 * The same kernel, whose operations throw the signal's reason instead of beginning once it is raised.
 *
 * @param onPart is called for each part that a union has taken in
 */
export function stoppable(kernel: Kernel, signal: AbortSignal | undefined, onPart?: () => void): Kernel {
  const giveWay = async () => {
    await pause();
    signal?.throwIfAborted();
  };
  return {
    name: kernel.name,
    union: (parts) => giveWay().then(() => kernel.union(parts, signal, onPart)),
    subtract: (body, tool) => giveWay().then(() => kernel.subtract(body, tool, signal)),
    cut: (body, keep) => giveWay().then(() => kernel.cut(body, keep, signal)),
  };
}
