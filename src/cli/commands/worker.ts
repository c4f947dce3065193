/**
 * annulet worker: makes the rings of ranges that are on a queue.
 */
import { AnnuletError } from "../../index.js";
import { QUEUE_DEFAULTS } from "../../range/disk/queue/queue-link.js";
import { type ServedJob, type ServeSetup, serveRanges } from "../../range/disk/queue/serve-ranges.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { type Io, print, say } from "../io.js";
import { type LimitOptions, limitsOf, MAX_SECONDS } from "../limit-options.js";
import { plainJson } from "../plain-text.js";
import {
  JOBS_OPTION,
  linkSetup,
  type MakerOptions,
  MEMORY_OPTION,
  makerProblems,
  memoryOf,
  PASSWORD,
  QUEUE_OPTION,
  QUEUE_WAIT_OPTION,
  type QueueOptions,
  STORE_OPTION,
  waitProblems,
} from "../range/queue-options.js";
import { holdSignals, Interrupted } from "../signals.js";
import { usage } from "../usage.js";

interface Options extends Pick<LimitOptions, "maxSeconds">, QueueOptions, MakerOptions {
  readonly output?: string;
  readonly lostAfter?: number;
  readonly json?: boolean;
}

export const workerCommand: Command<Options> = {
  name: "worker",
  details: [
    "Works until it is ended, by Ctrl-C for instance; what it was at others make. It needs the folder that the ranges share with it.",
    `A password need not stand on the command line: ${PASSWORD} is read too.`,
  ],
  examples: [
    {
      line: "annulet worker --queue redis://queue.local:6379 -o /mnt/shop",
      does: "rings of annulet range … -o /mnt/shop/heron --queue …",
    },
  ],
  args: [],
  options: [
    { ...QUEUE_OPTION, description: "the queue's Redis: redis://host:6379" },
    {
      flags: "-o, --output <folder>",
      description: "folder in which the ranges' folders stand (default: the current one)",
    },
    STORE_OPTION,
    JOBS_OPTION,
    {
      ...MAX_SECONDS,
      description: "give up a variant after so long, though its range allows more (default: as its range says)",
    },
    MEMORY_OPTION,
    {
      flags: "--lost-after <seconds>",
      description: `make what a worker was at that says nothing for so long (default: ${QUEUE_DEFAULTS.lostAfter})`,
      number: true,
    },
    QUEUE_WAIT_OPTION,
    { ...JSON_OPTION, description: "print a line of JSON for each job" },
  ],
  async run({ options }, io) {
    const setup = checkUsage(options, io);
    return holdSignals(async (caught, signal) => {
      await serveRanges({ ...setup, signal, onJob: (job) => tell(job, options.json === true, io) });
      const ended = await caught();
      if (ended !== undefined) throw new Interrupted(ended, "ended: what it was at others make");
      return EXIT.done;
    });
  },
};

/** Everything that is wrong is said at once. */
function checkUsage(options: Options, io: Io): Omit<ServeSetup, "signal"> {
  const { output, queue, jobs, lostAfter, queueWait } = options;
  const problems = [...makerProblems(options), ...waitProblems("--queue-wait", queueWait)];
  problems.push(...waitProblems("--lost-after", lostAfter));
  if (queue === undefined)
    problems.push({ ...usage("There is no queue."), hint: "name one: --queue redis://host:6379" });
  if (problems.length > 0 || queue === undefined) throw new AnnuletError(problems);
  return {
    ...linkSetup(options, io),
    queue,
    folder: output,
    jobs,
    lostAfter,
    limits: limitsOf(options),
    ...memoryOf(options),
  };
}

function tell({ range, names, kinds, seconds }: ServedJob, json: boolean, io: Io): void {
  if (json) {
    print(io, plainJson({ range, names, kinds, seconds }, 0));
    return;
  }
  const counted = (["made", "kept", "failed"] as const).flatMap((kind) => {
    const count = kinds.filter((one) => one === kind).length;
    return count === 0 ? [] : [`${count} ${kind}`];
  });
  const others = names.length === 1 ? "" : ` and ${names.length - 1} more`;
  say(io, `${range}: ${names[0]}${others}: ${counted.join(", ")}, ${seconds.toFixed(1)} s`);
}
