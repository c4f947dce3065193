/**
 * What a process of `makers.ts` runs. It ends when the range's own process does, however that ends.
 */
export { makeVariants } from "./make-variant.js";

if (process.env.TINYPOOL_WORKER_ID !== undefined) {
  // Ctrl-C goes to all processes of a terminal: the range's own decides when this one ends.
  for (const signal of ["SIGINT", "SIGHUP"] as const) process.on(signal, () => {});
  process.on("disconnect", () => process.exit());
}
