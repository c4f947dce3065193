/**
 * Answers questions about one design: takes what is remembered and lets stages work out the rest.
 */
import { canonicalText } from "../base/canonical.js";
import { definedOf } from "../base/defined-of.js";
import { fillLimits, type Limits } from "../base/limits.js";
import { pause } from "../base/pause.js";
import { tellWasm } from "../base/wasm-places.js";
import { Work } from "../base/work.js";
import { readDesign } from "../design/read.js";
import type { Design } from "../design/schema.js";
import type { Answer, AnswerStore } from "./answer-store.js";
import type { RingOptions } from "./answers.js";
import type { Asker, OnStage } from "./asker.js";
import { attempt } from "./attempt.js";
import { Heard } from "./heard.js";
import { filesNow } from "./named-files.js";
import type { EngineSetup } from "./options/questions.js";
import { Pieces } from "./pieces.js";
import type { Node } from "./plan.js";
import { type Teller, tellerOf } from "./progress.js";
import type { StageName, Tools } from "./stage.js";
import { TimeLimit } from "./time-limit.js";
import { type OptionText, type Told, Walk } from "./walk.js";

/** A question while it is worked. */
interface Running {
  readonly limits: Limits;
  readonly teller: Teller<Node>;
  /** Of the stage that works now, where this question began it. */
  work: Work | undefined;
}

export class Engine {
  readonly #option: RingOptions;
  readonly #store: AnswerStore;
  readonly #onStage: OnStage | undefined;
  readonly #optionText: OptionText;
  readonly #limits: Limits;
  /** Milliseconds that reading the document took. */
  readonly #ms: number;
  /** What the document came to: it is read at once, so that it may change afterwards. */
  readonly #read: { readonly pieces: Pieces; readonly design: Design } | { readonly error: unknown };

  /** Never throws for what is wrong in the document or the setup: each question does. */
  constructor(document: unknown, defaults: RingOptions, store: AnswerStore, setup: EngineSetup) {
    this.#store = store;
    this.#optionText = optionTexts(store);
    const { onStage, limits, wasm, ...told } = "value" in setup ? setup.value : {};
    tellWasm(wasm);
    this.#onStage = onStage;
    this.#limits = fillLimits(limits);
    const start = performance.now();
    this.#read = readAll(document, setup);
    this.#ms = performance.now() - start;
    const files = told.files ?? defaults.files;
    const option = { ...defaults, ...definedOf(told) };
    this.#option = "design" in this.#read ? { ...option, files: filesNow(files, this.#read.design) } : option;
  }

  /** Whether document and setup could be read. */
  get valid(): boolean {
    return !("error" in this.#read);
  }

  /** @throws AnnuletError with everything that is wrong in the document */
  get design(): Design {
    if ("error" in this.#read) throw this.#read.error;
    return this.#read.design;
  }

  /**
   * Options are checked before any work begins.
   *
   * @throws what a stage throws; an AnnuletError takes the warnings raised so far with it
   */
  async ask<Name extends StageName>(
    names: readonly Name[],
    chosen: Partial<RingOptions>,
    { signal, onProgress }: Asker,
  ): Promise<Told<Name>> {
    const walk = this.#walk(names, chosen);
    const limits = this.#limits;
    for (const node of walk.order.filter(checksOptions)) {
      walk.take(node, this.#remembered(walk, node) ?? this.#slice(walk, node));
    }
    onProgress?.({ stage: "document", share: 0 });
    await pause();
    signal?.throwIfAborted();
    const heard = new Heard(onProgress, signal);
    const running: Running = { limits, teller: tellerOf(walk.order, heard.hear), work: undefined };
    const time = new TimeLimit(limits.seconds, signal, () => running.work?.at);
    try {
      for (const node of walk.order) {
        const answer = this.#try(
          walk,
          node,
          () => this.#remembered(walk, node) ?? this.#share(walk, node, time.signal, running),
        );
        walk.take(node, answer instanceof Promise ? await answer : answer);
        heard.rethrow();
      }
    } finally {
      time.end();
      heard.end();
    }
    return this.#told(walk);
  }

  #walk<Name extends StageName>(names: readonly Name[], chosen: Partial<RingOptions>): Walk<Name> {
    if ("error" in this.#read) throw this.#read.error;
    const option: RingOptions = { ...this.#option, ...definedOf(chosen) };
    return new Walk(names, option, this.#read.pieces, this.#optionText);
  }

  #told<Name extends StageName>(walk: Walk<Name>): Told<Name> {
    const told = walk.told();
    return { ...told, timings: { document: this.#ms, ...told.timings } };
  }

  #remembered<Name extends StageName>(walk: Walk<Name>, node: Node): Answer | undefined {
    return this.#store.find(node.name, walk.key(node));
  }

  /** What goes wrong before a stage works, since its design cannot be, is said as if the stage did. */
  #try<Name extends StageName, Result>(walk: Walk<Name>, node: Node, run: () => Result): Result {
    try {
      return run();
    } catch (error) {
      throw walk.failure(error, node.piece);
    }
  }

  #share<Name extends StageName>(
    walk: Walk<Name>,
    node: Node,
    signal: AbortSignal,
    running: Running,
  ): Answer | Promise<Answer> {
    if (node.stage.kind === "slice") return this.#slice(walk, node);
    running.teller.begin(node);
    running.work = undefined;
    const run = async (stopped: AbortSignal) => {
      await pause();
      stopped.throwIfAborted();
      running.work = new Work(running.limits, stopped, (share) => running.teller.within(node, share));
      return this.#work(walk, node, { signal: stopped, work: running.work });
    };
    return this.#store.share({ stage: node.name, key: walk.key(node), by: running.limits }, run, signal);
  }

  #slice<Name extends StageName>(walk: Walk<Name>, node: Node): Answer {
    const answer = this.#work(walk, node, AT_ONCE);
    if (answer instanceof Promise) throw new Error(`${node.name} is a slice and has to be waited for`);
    this.#store.keep(node.name, walk.key(node), answer);
    return answer;
  }

  #work<Name extends StageName>(
    walk: Walk<Name>,
    node: Node,
    how: Pick<Tools, "signal" | "work">,
  ): Answer | Promise<Answer> {
    this.#onStage?.(node.name, node.piece);
    return attempt(node, walk.given(node), how, this.#store);
  }
}

/** Whether a stage takes an option as it is: a slice of options, and of the design at most. */
function checksOptions({ stage: { kind }, reads, piece }: Node): boolean {
  if (kind !== "slice" || piece === "cast") return false;
  return reads.every(({ node }) => node === undefined) && reads.some(({ read }) => read.startsWith("option."));
}

function readAll(document: unknown, setup: EngineSetup): { pieces: Pieces; design: Design } | { error: unknown } {
  if ("error" in setup) return setup;
  try {
    const design = readDesign(document);
    return { pieces: new Pieces(design), design };
  } catch (error) {
    return { error };
  }
}

/** For what is over at once. */
const AT_ONCE = { signal: new AbortController().signal, work: new Work() } as const;

/**
 * Kernels are compared by what they are, files by asking for them again in each ring, all other options by their values.
 */
function optionTexts(store: AnswerStore): OptionText {
  const files = `files ${store.serial()}`;
  return (name, value) => {
    if (name === "files") return files;
    return name === "kernel" ? store.nameOf(value as object) : canonicalText(value);
  };
}
