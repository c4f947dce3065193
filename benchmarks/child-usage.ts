/**
 * Loaded into a process before its program (`node --import`): tells at its end what it has used, as JSON on descriptor 3.
 */
import { writeSync } from "node:fs";

/** Descriptor that the parent reads. */
const REPORT = 3;

process.on("exit", () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeSync(REPORT, JSON.stringify({ cpu: (userCPUTime + systemCPUTime) / 1e3, peak: maxRSS }));
});
