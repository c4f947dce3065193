/**
 * A worker: makes variants that ranges on any machine have put on the queue, into the store that it shares with them.
 */

import { availableParallelism } from "node:os";
import { join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import type { Job, Worker } from "bullmq";
import { AnnuletError } from "../../../base/errors.js";
import type { Limits } from "../../../base/limits.js";
import type { MakeAnswer, VariantLimits } from "../make-variant.js";
import { type Makers, startMakers } from "../makers.js";
import { PROGRAM, RANGE_DEFAULTS } from "../range-setup.js";
import { openStore } from "../store/open-store.js";
import type { StorePlace } from "../store/range-store.js";
import { answerText, type QueuedAnswer, type QueuedTask, readJob, readTask } from "./job-data.js";
import { type LinkSetup, PREFIX, QUEUE_DEFAULTS, QUEUE_NAME, QueueLink } from "./queue-link.js";
import { readKey, type Sealed, seal, unseal } from "./seal.js";

export interface ServeSetup extends LinkSetup {
  /** In which the folders of the ranges stand. Default the current one. */
  readonly folder?: string | undefined;
  /** URL of a module that exports `openStore(range)`: another store than the disk. */
  readonly store?: string | undefined;
  /** Processes that make rings. Default one for each core. */
  readonly jobs?: number | undefined;
  /** The most that each variant may cost, whatever its range allows. */
  readonly limits?: Partial<Limits> | undefined;
  /** Resident memory of a process, bytes, from which a new one takes its place. Default 10⁹. */
  readonly memory?: number | undefined;
  /** Seconds after which a worker that says nothing is taken for lost, and its rings are made by others. Default 30. */
  readonly lostAfter?: number | undefined;
  /** Ends the worker; what it was at others make. */
  readonly signal: AbortSignal;
  readonly onJob?: ((job: ServedJob) => void) | undefined;
  /** Who makes the rings. Default processes. */
  readonly makers?: Makers | undefined;
}

/** What came of one job. */
export interface ServedJob {
  readonly range: string;
  readonly names: readonly string[];
  /** In the order of names. */
  readonly kinds: readonly MakeAnswer["kind"][];
  readonly seconds: number;
}

/** Serves until the signal. @throws AnnuletError `queue-invalid`, `queue-away` */
export async function serveRanges(setup: ServeSetup): Promise<void> {
  const link = await QueueLink.open(setup, setup.signal);
  const server = new RangeServer(setup, link);
  try {
    await server.serve();
  } finally {
    await server.end();
  }
}

/** A job that this worker may not, or cannot, make is left for others so long, ms. Chosen. */
const LEAVE_MS = 2000;

/** After a job that cannot even be read, ms. Chosen. */
const AGAIN_MS = 1000;

/** How often a job is begun before it is given up: by workers that do not have the range's folder. Chosen. */
const MOST_BEGUN = 30;

/** How often a job is taken up again whose worker was lost: what takes every worker with it has to end. Chosen. */
const MOST_LOST = 4;

class RangeServer {
  readonly #setup: ServeSetup;
  readonly #link: QueueLink;
  readonly #makers: Makers;
  readonly #ended = new AbortController();
  #worker: Worker | undefined;

  constructor(setup: ServeSetup, link: QueueLink) {
    const { jobs = availableParallelism(), memory = RANGE_DEFAULTS.memory, makers } = setup;
    this.#setup = setup;
    this.#link = link;
    this.#makers = makers ?? startMakers({ jobs, memory, program: PROGRAM });
  }

  async serve(): Promise<void> {
    const { jobs = availableParallelism(), lostAfter = QUEUE_DEFAULTS.lostAfter, signal, onNews } = this.#setup;
    const { Worker } = await import("./library.js");
    this.#worker = new Worker(QUEUE_NAME, (job, token = "") => this.#process(job, token), {
      connection: this.#link.client,
      prefix: PREFIX,
      concurrency: jobs,
      lockDuration: 1000 * lostAfter,
      stalledInterval: 1000 * lostAfter,
      maxStalledCount: MOST_LOST,
      runRetryDelay: AGAIN_MS,
    });
    // The client tells by itself how Redis is.
    this.#worker.on("error", () => {});
    onNews?.(`at work for ranges in ${this.#where}, from ${this.#link.shown}`);
    await new Promise<void>((resolve) => {
      for (const stop of [signal, this.#link.over]) {
        stop.addEventListener("abort", () => resolve());
        if (stop.aborted) resolve();
      }
    });
    this.#link.over.throwIfAborted();
  }

  async end(): Promise<void> {
    this.#ended.abort();
    await this.#worker?.pause(true).catch(() => {});
    await this.#makers.end();
    // What was at work is put back meanwhile.
    await this.#link.closeAfter(async (isThere) => this.#worker?.close(!isThere));
  }

  async #process(job: Job, token: string): Promise<Sealed> {
    const { UnrecoverableError } = await import("./library.js");
    const id = job.id ?? "";
    const data = readJob(job.data);
    if (data === undefined) throw new UnrecoverableError("it is no job of a range");
    const place = this.#placeOf(data.range);
    const run = await readKey(await openStore(place));
    if (run?.place !== data.place) return this.#leave(job, data.range);
    const { key } = run;
    const text = unseal(data, key, id);
    if (text === undefined) throw new UnrecoverableError("it is not sealed by the range's run");
    const task = readTask(text);
    if (task === undefined) throw new UnrecoverableError("it is no task of this version");
    const begun = performance.now();
    const answer = await this.#make(task, { place, key, job, token });
    this.#tell(data.range, task, answer, (performance.now() - begun) / 1000);
    return seal(answerText(answer), key, id);
  }

  #placeOf(range: string): StorePlace {
    const { folder = ".", store } = this.#setup;
    return store === undefined ? { folder: join(folder, range) } : { folder: range, module: store };
  }

  get #where(): string {
    return this.#setup.store ?? this.#setup.folder ?? ".";
  }

  /** A range whose folder is not here: others may have it. This worker takes its time, so that it does not take all jobs. */
  async #leave(job: Job, range: string): Promise<never> {
    const { UnrecoverableError, WaitingError } = await import("./library.js");
    this.#setup.onNews?.(
      `a job asks for the range ${range}, of which there is no run in ${this.#where}: left to others`,
    );
    await sleep(LEAVE_MS, undefined, { signal: this.#ended.signal }).catch(() => {});
    if (job.attemptsStarted > MOST_BEGUN) throw new UnrecoverableError(`no worker has the range ${range} in its store`);
    await job.moveToWait(job.token);
    throw new WaitingError();
  }

  async #make(task: QueuedTask, { place, key, job, token }: Begun): Promise<QueuedAnswer> {
    const { carried: designFiles, limits, ...rest } = task;
    try {
      const { answers } = await this.#makers.make({
        ...rest,
        place,
        designFiles,
        run: key,
        limits: this.#bounded(limits),
      });
      const fault = answers.find(isOfStore);
      // Another try may meet another disk; the last one is the answer.
      if (fault?.kind === "failed" && !isLast(job)) throw new AnnuletError(fault.problems);
      return { answers };
    } catch (error) {
      if (this.#ended.signal.aborted) return this.#putBack(job, token);
      if (!(error instanceof AnnuletError)) throw error;
      const [first, ...others] = error.problems;
      // What does not end here would not elsewhere.
      if (error.code === "variant-stuck" || isLast(job)) return { problems: [first, ...others] };
      throw error;
    }
  }

  async #putBack(job: Job, token: string): Promise<never> {
    const { WaitingError } = await import("./library.js");
    await job.moveToWait(token);
    throw new WaitingError();
  }

  #bounded({ seconds, triangles, corners }: VariantLimits): VariantLimits {
    const own = this.#setup.limits ?? {};
    return {
      seconds: Math.min(seconds, own.seconds ?? seconds),
      ...least("triangles", triangles, own.triangles),
      ...least("corners", corners, own.corners),
    };
  }

  #tell(range: string, { variants }: QueuedTask, answer: QueuedAnswer, seconds: number): void {
    const names = variants.map(({ name }) => name);
    const kinds = names.map((_, i) => ("answers" in answer ? answer.answers[i].kind : "failed"));
    this.#setup.onJob?.({ range, names, kinds, seconds });
  }
}

/** The lesser of two limits; none where neither is told. */
function least(name: keyof Limits, one: number | undefined, other: number | undefined): Partial<Limits> {
  const most = Math.min(one ?? Number.POSITIVE_INFINITY, other ?? Number.POSITIVE_INFINITY);
  return Number.isFinite(most) ? { [name]: most } : {};
}

/** A job that is begun, and where its range stands. */
interface Begun {
  readonly place: StorePlace;
  readonly key: string;
  readonly job: Job;
  readonly token: string;
}

/** What is wrong with where files go, and not with the variant. */
const OF_STORE = ["output-failed", "store-failed"];

function isOfStore(answer: MakeAnswer): boolean {
  return answer.kind === "failed" && OF_STORE.includes(answer.problems[0].code);
}

function isLast({ attemptsMade, opts: { attempts = 1 } }: Job): boolean {
  return attemptsMade + 1 >= attempts;
}
