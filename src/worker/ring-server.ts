/**
 * The worker's side: opened rings by number, and their answers as they are posted.
 */
import { transfer } from "comlink";
import { definedOf } from "../base/defined-of.js";
import { AnnuletError } from "../base/errors.js";
import type { FileSource } from "../base/files.js";
import type { RingSetup } from "../ring/open-ring.js";
import {
  type Answered,
  ASKER_AT,
  type Extra,
  type Page,
  type PostedSetup,
  type Question,
  type RingWorker,
} from "./messages.js";
import { pack } from "./plain.js";

type Library = typeof import("../ring/open-ring.js");
type Opened = ReturnType<Library["openRing"]>;

/** What is told while nobody listens. */
const NOBODY: Page = { progress: () => undefined, stage: () => undefined, file: () => undefined };

export class RingServer implements RingWorker {
  #page = NOBODY;
  readonly #rings = new Map<number, Promise<Opened>>();
  /** What each was opened with. The page goes by a ring's number, so what it is asked and told is bound anew to each. */
  readonly #setups = new Map<number, Omit<PostedSetup, "wasm">>();
  /** Of questions that are being answered. */
  readonly #stops = new Map<number, AbortController>();

  hear(page: Page): void {
    this.#page = page;
  }

  open(ring: number, document: unknown, setup: PostedSetup): void {
    const opened = loadLibrary().then(({ openRing }) => openRing(document, this.#setup(ring, setup)));
    this.#keep(ring, opened, setup);
  }

  change(from: number, ring: number, document: unknown, setup: PostedSetup | undefined): void {
    const whole = { ...this.#setups.get(from), ...definedOf(setup ?? {}) };
    const changed = this.#ring(from).then((before) => before.change(document, this.#setup(ring, whole)));
    this.#keep(ring, changed, whole);
  }

  close(ring: number): void {
    this.#rings.delete(ring);
    this.#setups.delete(ring);
  }

  async ask(
    ring: number,
    question: number,
    name: Question | Extra,
    given: readonly unknown[],
    hears: boolean,
  ): Promise<Answered> {
    const stop = new AbortController();
    this.#stops.set(question, stop);
    try {
      const opened = await this.#ring(ring);
      const asker = {
        signal: stop.signal,
        onProgress: hears ? (progress: unknown) => this.#page.progress(question, progress as never) : undefined,
      };
      // Loaded with the library, so that a page that only asks takes none of it.
      const { answerQuestion, isFreshAnswer } = await import("./answer-question.js");
      const answer = await answerQuestion(opened, name, withAsker(name, given, asker));
      const { value, buffers } = pack(answer, isFreshAnswer(name));
      return transfer({ value }, [...buffers]);
    } catch (error) {
      return { error: AnnuletError.from(error).toJSON() };
    } finally {
      this.#stops.delete(question);
    }
  }

  stop(question: number): void {
    this.#stops.get(question)?.abort();
  }

  #ring(number: number): Promise<Opened> {
    return this.#rings.get(number) ?? Promise.reject(ringClosed());
  }

  /** What goes wrong is told by each question. Where WebAssembly's files are counts once a process. */
  #keep(number: number, opened: Promise<Opened>, { wasm: _, ...setup }: PostedSetup): void {
    opened.catch(() => undefined);
    this.#rings.set(number, opened);
    this.#setups.set(number, setup);
  }

  #setup(ring: number, { files, stages = false, ...rest }: PostedSetup): RingSetup {
    const asked: FileSource = async (name) => this.#page.file(ring, name);
    return {
      ...rest,
      files: files === "page" ? asked : files,
      onStage: stages ? (stage, piece) => this.#page.stage(ring, stage, piece) : undefined,
    };
  }
}

/** A question about a ring that its page has closed. */
function ringClosed(): AnnuletError {
  return new AnnuletError({
    code: "ring-closed",
    message: "the ring was closed before it was asked",
    hint: "ask first, or open it again",
  });
}

function withAsker(name: Question | Extra, given: readonly unknown[], asker: object): readonly unknown[] {
  const at = ASKER_AT[name];
  const all = [...given];
  // What is none is left as it is, so that it is refused as it would be without a worker.
  const own = all[at];
  all[at] = own === undefined || (typeof own === "object" && own !== null) ? { ...own, ...asker } : own;
  return all;
}

/** The library is loaded when the first ring is opened: a page that only connects does not carry it. */
function loadLibrary(): Promise<Library> {
  return import("../ring/open-ring.js");
}
