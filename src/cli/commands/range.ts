/**
 * annulet range: many rings of one design.
 */
import { AnnuletError, type Problem } from "../../index.js";
import { makeRange } from "../../range/disk/make-range.js";
import type { Manifest } from "../../range/disk/manifest.js";
import { mergeParts } from "../../range/disk/merge-parts.js";
import { RANGE_DEFAULTS, type RangeSetup } from "../../range/disk/range-setup.js";
import type { StorePlace } from "../../range/disk/store/range-store.js";
import { verifyRange } from "../../range/disk/verify-range.js";
import { readPart } from "../../range/expand/part.js";
import { type Command, JSON_OPTION } from "../command.js";
import { EXIT } from "../exit.js";
import { type Io, print, printJson, say } from "../io.js";
import { LIMIT_OPTIONS, type LimitOptions, limitsOf } from "../limit-options.js";
import { loadPlan, type PlanFile } from "../range/plan-file.js";
import {
  JOBS_OPTION,
  linkSetup,
  type MakerOptions,
  MEMORY_OPTION,
  makerProblems,
  memoryOf,
  QUEUE_OPTION,
  QUEUE_WAIT_OPTION,
  type QueueOptions,
  STORE_OPTION,
  waitProblems,
} from "../range/queue-options.js";
import { showPlan } from "../range/show-plan.js";
import { startTelling } from "../range/tell-range.js";
import { holdSignals, Interrupted } from "../signals.js";
import { usage } from "../usage.js";

interface Options extends LimitOptions, QueueOptions, MakerOptions {
  readonly output?: string;
  readonly planOnly?: boolean;
  readonly verify?: boolean;
  readonly merge?: boolean;
  readonly part?: string;
  readonly json?: boolean;
}

const [MAX_SECONDS, ...OTHER_LIMITS] = LIMIT_OPTIONS;

export const rangeCommand: Command<Options> = {
  name: "range",
  details: [
    "What is there already, of the same design, files and version, is kept: a run that was ended goes on where it was.",
    "A variant that fails is told, the rest is made, and the exit code is 1. annulet schema plan prints what a plan holds.",
  ],
  examples: [
    { line: "annulet range heron-range.json --plan-only", does: "the variants with their fit and estimated weight" },
    { line: "annulet range heron-range.json -o out", does: "makes them, with a table to look at: out/index.html" },
    { line: "annulet range heron-range.json -o out --verify", does: "checks every file against the manifest" },
    { line: "annulet range heron-range.json -o out --part 3/8", does: "the third of eight machines' share" },
    {
      line: "annulet range heron-range.json -o out --queue redis://queue.local:6379",
      does: "has them made by annulet worker, on any machine",
    },
    { line: "annulet range heron-range.json -o out --merge", does: "the shares, copied into one folder, as the whole" },
  ],
  args: [{ name: "<plan>", description: "plan of the range, JSON; - reads standard input" }],
  options: [
    { flags: "-o, --output <folder>", description: "folder for all that is made; made where it is not there" },
    { flags: "--plan-only", description: "print the variants with their fit and estimated weight, and make nothing" },
    { flags: "--verify", description: "check every file of the folder against its manifest, and make nothing" },
    { flags: "--part <i/n>", description: "only the i-th of n parts, for several machines" },
    { flags: "--merge", description: "put the parts together whose files were copied into the folder" },
    {
      ...JOBS_OPTION,
      description: `processes that make rings (default: one for each core); with --queue, jobs on it (default: ${RANGE_DEFAULTS.queued})`,
    },
    { ...MAX_SECONDS, description: `give up a variant after so long (default: ${RANGE_DEFAULTS.seconds})` },
    ...OTHER_LIMITS,
    MEMORY_OPTION,
    QUEUE_OPTION,
    QUEUE_WAIT_OPTION,
    STORE_OPTION,
    { ...JSON_OPTION, description: "print a line of JSON for each variant, and the manifest's digest last" },
  ],
  async run({ args: [path], options }, io) {
    const setup = { ...checkUsage(options), ...linkSetup(options, io) };
    const plan = await loadPlan(path, io);
    const json = options.json === true;
    if (options.planOnly) return showPlan(plan, json, io);
    const place = { folder: setup.folder, module: setup.store };
    if (options.verify) return verify(place, json, io);
    if (options.merge) return tellManifest(await mergeParts(plan.text, place, plan.folder), json, io);
    return make(plan, setup, json, io);
  },
};

/** Everything that is wrong is said at once. */
function checkUsage(options: Options): RangeSetup {
  const { output, planOnly, verify, merge, part, jobs, queueWait } = options;
  const problems: Problem[] = [];
  const modes = [planOnly, verify, merge].filter((mode) => mode === true).length;
  if (modes > 1) problems.push(usage("--plan-only, --verify and --merge are asked for one at a time."));
  if (output === undefined && planOnly !== true) {
    problems.push({ ...usage("There is no folder for what is made."), hint: "name one: -o out" });
  }
  problems.push(...makerProblems(options), ...waitProblems("--queue-wait", queueWait));
  if (problems.length > 0) throw new AnnuletError(problems);
  return {
    folder: output ?? ".",
    jobs,
    limits: limitsOf(options),
    ...(part === undefined ? {} : { part: readPart(part) }),
    ...memoryOf(options),
  };
}

async function make(plan: PlanFile, setup: RangeSetup, json: boolean, io: Io): Promise<number> {
  return holdSignals(async (caught, signal) => {
    const teller = startTelling(json, io);
    try {
      const range = makeRange(plan.text, { ...setup, planFolder: plan.folder, onCount: teller.expect, signal });
      let step = await range.next();
      for (; step.done !== true; step = await range.next()) teller.tell(step.value);
      teller.stop();
      const { made, kept, failed, "left-out": leftOut } = teller.counts;
      say(io, `${made} made, ${kept} kept as they were, ${leftOut} left out, ${failed} failed`);
      return tellManifest(step.value, json, io);
    } catch (error) {
      teller.stop();
      const ended = await caught();
      if (ended === undefined) throw error;
      throw new Interrupted(ended, "interrupted: what was made stays, and the same command goes on from there");
    }
  });
}

/** Exit code 1 where a variant failed. */
function tellManifest({ sha256, variants, failed }: Manifest, json: boolean, io: Io): number {
  const files = variants.reduce((sum, variant) => sum + variant.files.length, 0);
  if (json) print(io, JSON.stringify({ manifest: sha256, files, failed: failed.length }));
  else print(io, `manifest: ${variants.length} variants, ${files} files, SHA-256 ${sha256}`);
  return failed.length === 0 ? EXIT.done : EXIT.check;
}

async function verify(place: StorePlace, json: boolean, io: Io): Promise<number> {
  const { manifests, files, deviations } = await verifyRange(place);
  const seals = manifests.map(({ sha256 }) => sha256);
  if (json) printJson(io, { manifests: seals, files, deviations });
  else {
    for (const { path, what } of deviations) print(io, `${what}: ${path}`);
    print(io, `${files} files read, ${deviations.length} not as the manifest says; its SHA-256 is ${seals.join(", ")}`);
  }
  return deviations.length === 0 ? EXIT.done : EXIT.check;
}
