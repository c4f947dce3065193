/**
 * The pure JavaScript kernel: three-bvh-csg, for places where WebAssembly is not allowed.
 */
import { pause } from "../../base/pause.js";
import type { Kernel } from "./kernel.js";

/**
 * The boolean kernel in plain JavaScript, for places where WebAssembly is not allowed. Slower, and closes less often.
 *
 * @example
 * const { report } = await build(document, { kernel: bvhKernel, detail: "draft" });
 * console.log(report.kernel); // the kernel whose result is taken: manifold where bvh's does not close
 */
export const bvhKernel: Kernel = {
  name: "bvh",
  async union([first, ...others], signal, onPart) {
    const { add } = await load();
    let sum = first;
    for (const other of others) {
      await pause();
      signal?.throwIfAborted();
      sum = add(sum, other);
      onPart?.();
    }
    return sum;
  },
  async subtract(body, tool) {
    const { subtract } = await load();
    return subtract(body, tool);
  },
  async cut(body, halfSpace) {
    const { cut } = await load();
    return cut(body, halfSpace);
  },
};

/** Loaded when it is first asked for: most builds never are. */
function load(): Promise<typeof import("./bvh-work.js")> {
  return import("./bvh-work.js");
}
