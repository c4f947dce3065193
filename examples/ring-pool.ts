/**
 * Workers that make rings, one for each core: what `many.ts` and `server.ts` share.
 */
import { availableParallelism } from "node:os";
import { Tinypool } from "tinypool";

/** Rings that are made at one time. */
export const threads = availableParallelism();

/** Starts workers when they are first needed. End them by `destroy()`. */
export function startPool(): Tinypool {
  return new Tinypool({
    filename: new URL("./ring-worker.js", import.meta.url).href,
    runtime: "worker_threads",
    minThreads: 1,
    maxThreads: threads,
  });
}
