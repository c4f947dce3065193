#!/usr/bin/env node
import { reasonOf } from "../disk/reason-of.js";
/**
 * The program `annulet`.
 */
// Only what loads nothing else: how the rest is loaded is set first.
import { EXIT } from "./exit.js";
import { startQuickly } from "./quick-start.js";

startQuickly();

// Whoever reads the data may stop before its end, as head does: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") return process.exit();
  process.stderr.write(`error: standard output cannot be written: ${reasonOf(error)}.\n`);
  process.exit(EXIT.usage);
});
// Nor is it one that nobody listens to the talk, or that it cannot be kept: the work goes on.
process.stderr.on("error", () => {});

const { run } = await import("./run.js");
process.exitCode = await run(process.argv.slice(2), process);
