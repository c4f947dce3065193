#!/usr/bin/env node
/**
 * The program `annulet`.
 */
import { startQuickly } from "./quick-start.js";

startQuickly();

// Whoever reads the data may stop before its end, as head does: that is no failure. Nor is it one that nobody listens
// to the talk: the work goes on.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit();
});
process.stderr.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

const { run } = await import("./run.js");
process.exitCode = await run(process.argv.slice(2), process);
