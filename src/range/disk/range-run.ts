/**
 * The run of a range: looks for what is there, plans the rest, and keeps as many groups in work as there are jobs.
 */
import { availableParallelism } from "node:os";
import { basename, resolve } from "node:path";
import { AnnuletError, type Problem } from "../../base/errors.js";
import { pause } from "../../base/pause.js";
import { fileSource } from "../../disk/file-source.js";
import type { FaultyVariant, OpenPlan, Variant } from "../expand/open-plan.js";
import { groupsOf } from "../expand/part.js";
import { Planner } from "../figures/plan-variant.js";
import { type LeftOutRecord, type MadeRecord, RECORD_VERSION } from "../records/record.js";
import { LookThrough } from "./look-through.js";
import type { MakeAnswer, TaskVariant } from "./make-variant.js";
import { type Makers, startMakers } from "./makers.js";
import { QueueMakers } from "./queue/queue-makers.js";
import { PROGRAM, RANGE_DEFAULTS, type RangeSetup } from "./range-setup.js";
import { writeRecord } from "./record-store.js";
import type { RangeStore } from "./store/range-store.js";

/** What became of a variant. */
export type RangeEvent = Pick<Variant, "number" | "name" | "shown"> &
  (
    | { readonly kind: "made" | "kept"; readonly record: MadeRecord }
    | { readonly kind: "left-out"; readonly record: LeftOutRecord }
    | { readonly kind: "failed"; readonly problems: readonly Problem[] }
  );

/** A variant that has to be made. */
interface Waiting extends TaskVariant {
  readonly shown: Variant["shown"];
}

interface Done {
  readonly id: number;
  readonly events: readonly RangeEvent[];
}

export class RangeRun {
  readonly #open: OpenPlan;
  readonly #setup: RangeSetup;
  readonly #store: RangeStore;
  readonly #planner: Planner;
  readonly #look: LookThrough;
  readonly #running = new Map<number, Promise<Done>>();
  readonly #jobs: number;
  #makers: Promise<Makers> | undefined;
  #tasks = 0;

  constructor(open: OpenPlan, setup: RangeSetup, store: RangeStore) {
    const files = fileSource(setup.planFolder);
    this.#open = open;
    this.#setup = setup;
    this.#store = store;
    this.#jobs = setup.jobs ?? (setup.queue === undefined ? availableParallelism() : RANGE_DEFAULTS.queued);
    this.#planner = new Planner(open.plan, files, setup.signal);
    this.#look = new LookThrough(open.plan, files, store);
  }

  /** What became of each variant, as it comes. @throws the signal's reason */
  async *events(): AsyncGenerator<RangeEvent, void, void> {
    const { signal, part } = this.#setup;
    const stop = () => void this.#end();
    signal?.addEventListener("abort", stop);
    try {
      for (const group of groupsOf(this.#open, part)) {
        const waiting: Waiting[] = [];
        for (const variant of group) {
          const found = await this.#find(variant);
          if ("kind" in found) yield found;
          else waiting.push(found);
        }
        if (waiting.length > 0) this.#begin(waiting);
        while (this.#running.size >= this.#jobs) yield* await this.#next();
        await pause();
        signal?.throwIfAborted();
      }
      while (this.#running.size > 0) yield* await this.#next();
    } finally {
      signal?.removeEventListener("abort", stop);
      await this.#end();
    }
  }

  /** A variant that is there, left out or at fault; or one to be made. */
  async #find(variant: Variant | FaultyVariant): Promise<RangeEvent | Waiting> {
    const { number, name, shown } = variant;
    if ("kind" in variant) return { number, name, shown, kind: "failed", problems: variant.problems };
    const { source, files } = await this.#look.source(variant);
    const kept = await this.#look.kept(name, source);
    if (kept?.kind === "made") return { number, name, shown, kind: "kept", record: kept };
    if (kept?.kind === "left-out") return { number, name, shown, kind: "left-out", record: kept };
    const planned = await this.#planner.plan(variant);
    if (planned.kind === "fault") return { number, name, shown, kind: "failed", problems: planned.problems };
    if (planned.kind === "planned") return { number, name, shown, source, files, document: planned.document };
    const { why, figures } = planned;
    const record: LeftOutRecord = { record: RECORD_VERSION, kind: "left-out", name, source, why, figures };
    await writeRecord(this.#store, record);
    return { number, name, shown, kind: "left-out", record };
  }

  #begin(variants: readonly Waiting[]): void {
    const id = ++this.#tasks;
    const work = this.#make(variants).then((events) => ({ id, events }));
    // Whoever waits for it hears of it; where nobody does any more, it is of no matter.
    work.catch(() => {});
    this.#running.set(id, work);
  }

  async #next(): Promise<readonly RangeEvent[]> {
    const { id, events } = await Promise.race(this.#running.values());
    this.#running.delete(id);
    return events;
  }

  async #make(variants: readonly Waiting[]): Promise<readonly RangeEvent[]> {
    const { signal, folder, store: module, planFolder = ".", limits } = this.#setup;
    const making = this.#open.plan;
    const makers = await this.#ready();
    try {
      const { outputs, piece, pictureWidth } = making;
      const { answers } = await makers.make({
        place: { folder, module },
        designFiles: { folder: planFolder },
        making: { outputs, piece, pictureWidth },
        limits: { seconds: RANGE_DEFAULTS.seconds, ...limits },
        variants: variants.map(({ shown: _, ...variant }) => variant),
      });
      return answers.map((answer, i) => eventOf(variants[i], answer));
    } catch (error) {
      signal?.throwIfAborted();
      makers.over?.throwIfAborted();
      if (!(error instanceof AnnuletError)) throw error;
      const [{ number, name, shown }] = variants;
      if (variants.length === 1) return [{ number, name, shown, kind: "failed", problems: error.problems }];
      // One of them was stuck or took its process with it: each by itself shows which.
      const events: RangeEvent[] = [];
      for (const variant of variants) events.push(...(await this.#make([variant])));
      return events;
    }
  }

  #ready(): Promise<Makers> {
    this.#makers ??= this.#start();
    return this.#makers;
  }

  async #start(): Promise<Makers> {
    const { makers, queue, memory = RANGE_DEFAULTS.memory, folder, planFolder, store: module } = this.#setup;
    if (queue !== undefined) {
      const range = module === undefined ? basename(resolve(folder)) : folder;
      return QueueMakers.open({ ...this.#setup, queue, range, store: this.#store, files: fileSource(planFolder) });
    }
    return makers ?? startMakers({ jobs: this.#jobs, memory, program: PROGRAM });
  }

  async #end(): Promise<void> {
    const makers = await this.#makers?.catch(() => undefined);
    await makers?.end();
  }
}

function eventOf({ number, name, shown }: Waiting, answer: MakeAnswer): RangeEvent {
  if (answer.kind === "failed") return { number, name, shown, kind: "failed", problems: answer.problems };
  return { number, name, shown, kind: answer.kind, record: answer.record };
}
