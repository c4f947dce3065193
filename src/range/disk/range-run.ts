/**
 * The run of a range: looks for what is there, plans the rest, and keeps as many groups in work as there are jobs.
 */
import { availableParallelism } from "node:os";
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
import type { RangeSetup } from "./range-setup.js";
import { writeRecord } from "./record-store.js";

/** What became of a variant. */
export type RangeEvent = Pick<Variant, "number" | "name" | "shown"> &
  (
    | { readonly kind: "made" | "kept"; readonly record: MadeRecord }
    | { readonly kind: "left-out"; readonly record: LeftOutRecord }
    | { readonly kind: "failed"; readonly problems: readonly Problem[] }
  );

/** Defaults; chosen. */
export const RANGE_DEFAULTS = { seconds: 300, memory: 1e9 } as const;

/** The program of the processes, beside this one where annulet is built. */
const PROGRAM = new URL("./range-worker.js", import.meta.url);

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
  readonly #planner: Planner;
  readonly #look: LookThrough;
  readonly #running = new Map<number, Promise<Done>>();
  readonly #jobs: number;
  #makers: Makers | undefined;
  #tasks = 0;

  constructor(open: OpenPlan, setup: RangeSetup) {
    const files = fileSource(setup.planFolder);
    this.#open = open;
    this.#setup = setup;
    this.#jobs = setup.jobs ?? availableParallelism();
    this.#planner = new Planner(open.plan, files, setup.signal);
    this.#look = new LookThrough(open.plan, files, setup.folder);
  }

  /** What became of each variant, as it comes. @throws the signal's reason */
  async *events(): AsyncGenerator<RangeEvent, void, void> {
    const { signal, part } = this.#setup;
    const stop = () => void this.#makers?.end();
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
      await this.#makers?.end();
    }
  }

  /** A variant that is there, left out or at fault; or one to be made. */
  async #find(variant: Variant | FaultyVariant): Promise<RangeEvent | Waiting> {
    const { number, name, shown } = variant;
    if ("kind" in variant) return { number, name, shown, kind: "failed", problems: variant.problems };
    const { source, files } = await this.#look.source(variant);
    const kept = this.#look.kept(name, source);
    if (kept?.kind === "made") return { number, name, shown, kind: "kept", record: kept };
    if (kept?.kind === "left-out") return { number, name, shown, kind: "left-out", record: kept };
    const planned = await this.#planner.plan(variant);
    if (planned.kind === "fault") return { number, name, shown, kind: "failed", problems: planned.problems };
    if (planned.kind === "planned") return { number, name, shown, source, files, document: planned.document };
    const { why, figures } = planned;
    const record: LeftOutRecord = { record: RECORD_VERSION, kind: "left-out", name, source, why, figures };
    writeRecord(this.#setup.folder, record);
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
    const { signal, folder, planFolder = ".", limits } = this.#setup;
    const making = this.#open.plan;
    try {
      const { outputs, piece, pictureWidth } = making;
      const { answers } = await this.#ready().make({
        folder,
        designFolder: planFolder,
        making: { outputs, piece, pictureWidth },
        limits: { seconds: RANGE_DEFAULTS.seconds, ...limits },
        variants: variants.map(({ shown: _, ...variant }) => variant),
      });
      return answers.map((answer, i) => eventOf(variants[i], answer));
    } catch (error) {
      signal?.throwIfAborted();
      if (!(error instanceof AnnuletError)) throw error;
      const [{ number, name, shown }] = variants;
      if (variants.length === 1) return [{ number, name, shown, kind: "failed", problems: error.problems }];
      // One of them was stuck or took its process with it: each by itself shows which.
      const events: RangeEvent[] = [];
      for (const variant of variants) events.push(...(await this.#make([variant])));
      return events;
    }
  }

  #ready(): Makers {
    const { makers, limits, memory = RANGE_DEFAULTS.memory } = this.#setup;
    const seconds = limits?.seconds ?? RANGE_DEFAULTS.seconds;
    this.#makers ??= makers ?? startMakers({ jobs: this.#jobs, seconds, memory, program: PROGRAM });
    return this.#makers;
  }
}

function eventOf({ number, name, shown }: Waiting, answer: MakeAnswer): RangeEvent {
  if (answer.kind === "failed") return { number, name, shown, kind: "failed", problems: answer.problems };
  return { number, name, shown, kind: answer.kind, record: answer.record };
}
