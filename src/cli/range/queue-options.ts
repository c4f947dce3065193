/**
 * What ranges and workers are both told: where the queue is, and where files go.
 */
import { pathToFileURL } from "node:url";
import type { Problem } from "../../index.js";
import type { LinkSetup } from "../../range/disk/queue/queue-link.js";
import { QUEUE_DEFAULTS } from "../../range/disk/queue/queue-link.js";
import { RANGE_DEFAULTS } from "../../range/disk/range-setup.js";
import type { OptionSpec } from "../command.js";
import { type Io, say } from "../io.js";
import { usage } from "../usage.js";

/** Bytes in a megabyte. */
const MEGABYTE = 1e6;

/** Most processes. Chosen: more than any machine has cores. */
const MOST_JOBS = 512;

export interface QueueOptions {
  readonly queue?: string;
  readonly queueWait?: number;
  readonly store?: string;
}

/** Of whoever makes rings. */
export interface MakerOptions {
  readonly jobs?: number;
  readonly maxMemory?: number;
}

export const JOBS_OPTION: OptionSpec = {
  flags: "-j, --jobs <count>",
  description: "processes that make rings (default: one for each core)",
  number: true,
};

export const MEMORY_OPTION: OptionSpec = {
  flags: "--max-memory <megabytes>",
  description: `resident memory from which a process is replaced (default: ${RANGE_DEFAULTS.memory / MEGABYTE})`,
  number: true,
};

export const QUEUE_OPTION: OptionSpec = {
  flags: "--queue <redis>",
  description: "have the rings made by annulet worker, on any machine: redis://host:6379",
};

export const QUEUE_WAIT_OPTION: OptionSpec = {
  flags: "--queue-wait <seconds>",
  description: `wait so long for a Redis that has gone away (default: ${QUEUE_DEFAULTS.wait})`,
  number: true,
};

export const STORE_OPTION: OptionSpec = {
  flags: "--store <module>",
  description: "module whose openStore puts files elsewhere than on the disk; the folder is what it calls the range",
};

/** Of the password in the environment, so that it need not stand on the command line, which every user of a machine can read. */
export const PASSWORD = "ANNULET_QUEUE_PASSWORD";

export function linkSetup({ queue, queueWait, store }: QueueOptions, io: Io): Partial<LinkSetup> & { store?: string } {
  return {
    ...(queue === undefined
      ? {}
      : { queue, queueWait, queuePassword: io.env[PASSWORD], onNews: (text) => say(io, text) }),
    ...(store === undefined ? {} : { store: pathToFileURL(store).href }),
  };
}

/** What is wrong with how much is to be made at once. */
export function makerProblems({ jobs, maxMemory }: MakerOptions): readonly Problem[] {
  const problems: Problem[] = [];
  if (jobs !== undefined && !(Number.isInteger(jobs) && jobs >= 1 && jobs <= MOST_JOBS)) {
    problems.push({ ...usage("--jobs is a number of processes."), value: jobs, allowed: `1 to ${MOST_JOBS}` });
  }
  if (maxMemory !== undefined && !(maxMemory > 0)) {
    problems.push({ ...usage("--max-memory is a number of megabytes."), value: maxMemory, allowed: "above 0" });
  }
  return problems;
}

/** What is wrong with how long is waited. */
export function waitProblems(name: string, seconds: number | undefined): readonly Problem[] {
  if (seconds === undefined || (seconds >= 1 && seconds <= MOST_SECONDS)) return [];
  return [{ ...usage(`${name} is a number of seconds.`), value: seconds, allowed: `1 to ${MOST_SECONDS}` }];
}

/** A day. */
const MOST_SECONDS = 86_400;

export function memoryOf({ maxMemory }: MakerOptions): { memory?: number } {
  return maxMemory === undefined ? {} : { memory: maxMemory * MEGABYTE };
}
