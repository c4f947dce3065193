/**
 * Has variants made by workers on any machine, through a queue in Redis: the same as processes of this one to who asks.
 */
import { randomBytes } from "node:crypto";
import { setTimeout as sleep } from "node:timers/promises";
import type { Job, Queue, QueueEvents } from "bullmq";
import { AnnuletError, type Problem } from "../../../base/errors.js";
import type { FileSource } from "../../../base/files.js";
import { requireSafe } from "../../names/safe-name.js";
import type { MakeAnswer, MakeAnswers, MakeTask } from "../make-variant.js";
import type { Makers } from "../makers.js";
import type { RangeStore } from "../store/range-store.js";
import { FileCarrier } from "./carried-files.js";
import { type JobData, readAnswer, readJob, taskText } from "./job-data.js";
import { type LinkSetup, PREFIX, QUEUE_DEFAULTS, QUEUE_NAME, QueueLink } from "./queue-link.js";
import { dropKey, newKey, type RunKey, requireKey, seal, takenOver, unseal } from "./seal.js";

export interface QueueMakersSetup extends LinkSetup {
  /** What the workers' store calls the range. */
  readonly range: string;
  readonly store: RangeStore;
  /** That the designs name. */
  readonly files: FileSource;
  readonly signal?: AbortSignal | undefined;
}

/** How often a task is tried where a worker's process or store fails, with a pause that doubles from a second on. Chosen. */
const TRIES = 4;
const PAUSE_MS = 1000;

/** How often it is looked whether jobs are still on the queue, and workers there, ms. Chosen. */
const LOOK_MS = 5000;

/** Letters of what the library says of a job. */
const LONGEST_REASON = 300;

/** How often it is told that there is no worker, ms. Chosen. */
const AGAIN_TOLD_MS = 60_000;

/** Seconds that rings of a run before may take until they are let go. Chosen: a worker that was lost is known in one. */
const OTHERS_S = 600;

/** Seconds that Redis keeps what nobody asked for any more. Chosen. */
const KEPT_S = 24 * 3600;

/** A task that workers have. */
interface Waiting {
  readonly data: JobData;
  readonly numbers: readonly number[];
  readonly since: number;
  readonly resolve: (answers: MakeAnswers) => void;
  readonly reject: (error: unknown) => void;
}

export class QueueMakers implements Makers {
  readonly #setup: QueueMakersSetup;
  readonly #link: QueueLink;
  readonly #queue: Queue;
  readonly #events: QueueEvents;
  readonly #carrier: FileCarrier;
  readonly #waiting = new Map<string, Waiting>();
  readonly #run = randomBytes(8).toString("hex");
  readonly #over = new AbortController();
  #own: RunKey = { place: "", key: "" };
  #jobs = 0;
  #settled = performance.now();
  /** Whether something may be left with workers. */
  #isBroken = false;
  #isLooking = false;
  #toldAlone = Number.NEGATIVE_INFINITY;
  #refused: { readonly since: number; readonly why: string } | undefined;
  #clock: NodeJS.Timeout | undefined;
  #ending: Promise<void> | undefined;

  private constructor(setup: QueueMakersSetup, link: QueueLink, queue: Queue, events: QueueEvents) {
    this.#setup = setup;
    this.#link = link;
    this.#queue = queue;
    this.#events = events;
    this.#carrier = new FileCarrier(setup.store, setup.files);
  }

  /** @throws AnnuletError `queue-invalid`, `queue-away`, `queue-busy`; the signal's reason */
  static async open(setup: QueueMakersSetup): Promise<QueueMakers> {
    const link = await QueueLink.open(setup, setup.signal);
    const { Queue, QueueEvents } = await import("./library.js");
    const connection = { connection: link.client, prefix: PREFIX };
    const queue = new Queue(QUEUE_NAME, connection);
    const events = new QueueEvents(QUEUE_NAME, connection);
    const makers = new QueueMakers(setup, link, queue, events);
    try {
      await makers.#begin();
      return makers;
    } catch (error) {
      await makers.end();
      setup.signal?.throwIfAborted();
      throw error;
    }
  }

  /** Is aborted where no more can be made: Redis was away for too long, or another run has taken the store over. */
  get over(): AbortSignal {
    return this.#over.signal;
  }

  /** @throws AnnuletError `variant-stuck`, `maker-lost`, `output-failed`, `store-failed` as the worker told it */
  async make({ making, limits, variants }: MakeTask): Promise<MakeAnswers> {
    this.over.throwIfAborted();
    const names = Object.assign({}, ...variants.map(({ files }) => files));
    const carried = await this.#carrier.carry(names);
    const id = `${this.#run}-${++this.#jobs}`;
    const text = taskText({ making, limits, variants, carried });
    const { place, key } = this.#own;
    const data = { range: this.#setup.range, place, ...seal(text, key, id) };
    const numbers = variants.map(({ number }) => number);
    return new Promise<MakeAnswers>((resolve, reject) => {
      this.#waiting.set(id, { data, numbers, since: performance.now(), resolve, reject });
      if (this.over.aborted) this.#rejectAll(this.over.reason);
      else this.#add(id, data);
    });
  }

  end(): Promise<void> {
    this.#ending ??= this.#close();
    return this.#ending;
  }

  async #begin(): Promise<void> {
    // The client tells by itself how Redis is; what else goes wrong with jobs shows when they are looked at.
    this.#queue.on("error", () => {});
    this.#events.on("error", () => void this.#hearAgain());
    this.#link.over.addEventListener("abort", () => this.#giveUp(this.#link.over.reason));
    requireSafe(this.#setup.range);
    this.#own = await newKey(this.#setup.store);
    const stop = AbortSignal.any([this.over, ...(this.#setup.signal === undefined ? [] : [this.#setup.signal])]);
    await orAborted(this.#clearOthers(stop), stop);
    this.#events.on("completed", ({ jobId, returnvalue }) => this.#completed(jobId, returnvalue));
    this.#events.on("failed", ({ jobId, failedReason }) => void this.#failed(jobId, failedReason));
    // Not by this run: another may have begun.
    this.#events.on("removed", ({ jobId }) => void (this.#waiting.has(jobId) && this.#look()));
    this.#clock = setInterval(() => void this.#look(), LOOK_MS);
  }

  /** What a run before has left on the queue: taken off; what is made just now is waited for, as it is written to the same store. */
  async #clearOthers(signal: AbortSignal): Promise<void> {
    const { range, onNews } = this.#setup;
    for (const job of await this.#jobsHere(["waiting", "delayed"])) await job.remove().catch(() => {});
    for (let left = OTHERS_S; left > 0; left--) {
      // One whose worker was lost can be taken off once its lock is over.
      const held = await Promise.all(
        (await this.#jobsHere(["active"])).map((job) => job.remove().then(isGone, isHeld)),
      );
      const count = held.filter((one) => one).length;
      if (count === 0) return;
      if (left === OTHERS_S) onNews?.(`waiting for ${count} rings of a run before`);
      await sleep(1000, undefined, { signal });
    }
    const message = `workers are still at rings of a run before, after ${OTHERS_S} s`;
    throw new AnnuletError({ code: "queue-busy", message, value: range, hint: "end those workers, or wait" });
  }

  /** Jobs of the same place. What cannot be read is somebody else's. */
  async #jobsHere(states: readonly ("waiting" | "delayed" | "active")[]): Promise<readonly Job[]> {
    const ids = await this.#queue.getRanges(states.map((state) => (state === "waiting" ? "wait" : state)));
    const jobs = await Promise.all(ids.map((id) => this.#queue.getJob(id).catch(() => undefined)));
    return jobs.flatMap((job) => (job !== undefined && readJob(job.data)?.place === this.#own.place ? [job] : []));
  }

  #add(id: string, data: JobData): void {
    const options = {
      jobId: id,
      attempts: TRIES,
      backoff: { type: "exponential", delay: PAUSE_MS },
      removeOnComplete: { age: KEPT_S },
      removeOnFail: { age: KEPT_S },
    };
    const taken = () => {
      this.#refused = undefined;
    };
    this.#queue.add("make", data, options).then(taken, (error: unknown) => this.#noteRefused(error));
  }

  /** It is put there again when it is looked for; a Redis whose memory is full refuses for long. */
  #noteRefused(error: unknown): void {
    if (this.#ending !== undefined) return;
    const why = error instanceof Error ? error.message : String(error);
    if (this.#refused === undefined) this.#setup.onNews?.(`${this.#link.shown} takes no job: ${why}`);
    this.#refused ??= { since: performance.now(), why };
    const { queueWait = QUEUE_DEFAULTS.wait } = this.#setup;
    if (performance.now() - this.#refused.since > 1000 * queueWait) this.#giveUp(refused(this.#link.shown, why));
  }

  #completed(id: string, value: unknown): void {
    const waiting = this.#waiting.get(id);
    if (waiting === undefined) return;
    const { text, seal: told } = Object(value) as { text?: unknown; seal?: unknown };
    const isSealed = typeof text === "string" && typeof told === "string";
    const own = isSealed ? unseal({ text, seal: told }, this.#own.key, id) : undefined;
    const answer = own === undefined ? undefined : readAnswer(own, waiting.numbers);
    const isOver = answer !== undefined && "answers" in answer && answer.answers.some(isTakenOver);
    // It is rejected with all others.
    if (isOver) {
      this.#giveUp(takenOver());
      return;
    }
    this.#take(id);
    if (answer === undefined) waiting.reject(lost("what came back is not what a worker of this range has sealed"));
    else if ("answers" in answer) waiting.resolve({ answers: answer.answers, memory: 0 });
    else waiting.reject(new AnnuletError(answer.problems));
  }

  async #failed(id: string, reason: string): Promise<void> {
    const waiting = this.#waiting.get(id);
    if (waiting === undefined) return;
    if ((await this.#isTakenOver()) || this.#waiting.get(id) !== waiting) return;
    this.#take(id);
    waiting.reject(lost(reason.slice(0, LONGEST_REASON)));
  }

  /** Gives up where another run has begun in the store, or it cannot be read. */
  async #isTakenOver(): Promise<boolean> {
    try {
      await requireKey(this.#setup.store, this.#own.key);
      return false;
    } catch (error) {
      this.#giveUp(error);
      return true;
    }
  }

  /** Off the list, and off the queue. */
  #take(id: string): void {
    this.#waiting.delete(id);
    this.#settled = performance.now();
    this.#queue.remove(id).catch(() => {});
  }

  /** Looks after jobs whose news may have been lost, and puts those there again that are not on the queue any more. */
  async #look(): Promise<void> {
    if (this.#isLooking || this.#link.client.status !== "ready") return;
    this.#isLooking = true;
    // What fails meanwhile is looked for the next time.
    await this.#lookAfterJobs().catch(() => {});
    this.#isLooking = false;
  }

  async #lookAfterJobs(): Promise<void> {
    if (await this.#isTakenOver()) return;
    const before = performance.now() - LOOK_MS;
    for (const [id, { data, since }] of [...this.#waiting]) {
      if (since > before || this.#ending !== undefined) continue;
      const state = await this.#queue.getJobState(id);
      if (state === "unknown" && this.#waiting.has(id)) this.#add(id, data);
      if (state !== "completed" && state !== "failed") continue;
      const job = await this.#queue.getJob(id);
      if (job === undefined) continue;
      if (state === "completed") this.#completed(id, job.returnvalue);
      else await this.#failed(id, job.failedReason ?? "");
    }
    const isDue = this.#settled < before && this.#toldAlone < performance.now() - AGAIN_TOLD_MS;
    if (this.#waiting.size > 0 && isDue) await this.#lookForWorkers();
  }

  async #lookForWorkers(): Promise<void> {
    if ((await this.#queue.getWorkersCount()) > 0) return;
    this.#toldAlone = performance.now();
    this.#setup.onNews?.(
      `${this.#waiting.size} jobs wait at ${this.#link.shown}, and no worker is there: annulet worker`,
    );
  }

  /** Events that cannot be read end the library's listening. */
  async #hearAgain(): Promise<void> {
    await sleep(LOOK_MS, undefined, { ref: false });
    if (this.#ending === undefined) await this.#events.run().catch(() => {});
  }

  #giveUp(reason: unknown): void {
    this.#isBroken = true;
    this.#over.abort(reason);
    this.#rejectAll(reason);
  }

  #rejectAll(reason: unknown): void {
    const all = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const { reject } of all) reject(reason);
  }

  async #clearStore(): Promise<void> {
    await this.#carrier.clear();
    await dropKey(this.#setup.store, this.#own.key);
  }

  async #close(): Promise<void> {
    clearInterval(this.#clock);
    const ids = [...this.#waiting.keys()];
    this.#over.abort(new Error("the range has ended"));
    this.#rejectAll(this.#over.signal.reason);
    // What is at work still asks for files and key, and is stored: the next run goes on from there.
    if (ids.length === 0 && !this.#isBroken) await this.#clearStore().catch(() => {});
    await this.#link.closeAfter(async () => {
      await Promise.all(ids.map((id) => this.#queue.remove(id).catch(() => {})));
      await this.#events.close();
      await this.#queue.close();
    });
  }
}

function isTakenOver(answer: MakeAnswer): boolean {
  return answer.kind === "failed" && answer.problems[0].code === takenOver().code;
}

function refused(shown: string, why: string): AnnuletError {
  const message = `Redis at ${shown} takes no jobs: ${why}`;
  const hint = "give it more memory; what was made stays, and the same command goes on from there";
  return new AnnuletError({ code: "queue-away", message, path: "queue", value: shown, hint });
}

/** The work, unless the signal comes before: then its reason is thrown. */
function orAborted<T>(work: Promise<T>, signal: AbortSignal): Promise<T> {
  const stopped = new Promise<never>((_, reject) => {
    const stop = () => reject(signal.reason);
    if (signal.aborted) stop();
    else signal.addEventListener("abort", stop, { once: true });
  });
  return Promise.race([work, stopped]);
}

const isGone = () => false;
const isHeld = () => true;

function lost(why: string): AnnuletError {
  const problem: Problem = { code: "maker-lost", message: `the worker that made it was lost: ${why}` };
  return new AnnuletError({ ...problem, hint: "look at what the workers say" });
}
